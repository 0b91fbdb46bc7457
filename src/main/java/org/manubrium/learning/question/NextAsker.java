package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;

/** What to test next: of several manoeuvres one reads differently in two diseases, the others would change and tell nothing. */
final class NextAsker implements Asker {
    private static final int LEAST_WRONG = 2;

    private final Invented invented;
    private final Affecting affecting;
    private final Written written;

    NextAsker(Invented invented, Affecting affecting) {
        this.invented = invented;
        this.affecting = affecting;
        this.written = new Written(invented);
    }

    @Override
    public String kind() {
        return "next";
    }

    @Override
    public List<String> subjects() {
        return affecting.illnesses().stream().map(Condition::id).toList();
    }

    @Override
    public Optional<SignQuestion> ask(String subject, String convention, List<String> confused, Random random) {
        return TwoPatients.ask(invented, affecting, subject, random, two -> ask(two, random));
    }

    private Optional<SignQuestion> ask(TwoPatients two, Random random) {
        List<Manoeuvre> changed = new ArrayList<>(affecting.by(two.truth().condition()).stream()
                .filter(two::changed)
                .toList());
        Collections.shuffle(changed, random);
        List<Manoeuvre> telling = changed.stream().filter(two::told).toList();
        List<Manoeuvre> silent = changed.stream().filter(m -> !two.told(m)).toList();
        return telling.isEmpty() || silent.size() < LEAST_WRONG
                ? Optional.empty()
                : Optional.of(question(telling.get(0), silent, two, random));
    }

    private SignQuestion question(Manoeuvre telling, List<Manoeuvre> silent, TwoPatients two, Random random) {
        Invented.Said truth = two.truth();
        Invented.Said rival = two.rival();
        Body ill = two.ill();
        Body alike = two.alike();
        Options options =
                Options.of(telling.name(), silent.stream().map(Manoeuvre::name).toList(), random);
        var items = invented.shown(telling, ill, alike);
        return new SignQuestion(
                fact(truth.condition().id()),
                "You think of " + truth.words() + ", or of " + rival.words()
                        + ". Which of these tells one from the other?",
                List.of(),
                options.words(),
                options.right(),
                "In " + truth.words() + ": " + written.readings(ill, telling, items) + ". In " + rival.words() + ": "
                        + written.readings(alike, telling, items)
                        + ". The others are changed by both, and in the same way.",
                Written.origin(truth.condition(), List.of(telling)));
    }
}

package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Person;

/** What to test next: of several manoeuvres one reads differently in two diseases, the others would change and tell nothing. */
final class NextAsker implements Asker {
    private static final int LEAST_WRONG = 2;

    private final Invented invented;
    private final Affecting affecting;
    private final Alikes alikes;
    private final Written written;

    NextAsker(Invented invented, Affecting affecting) {
        this.invented = invented;
        this.affecting = affecting;
        this.alikes = new Alikes(affecting);
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
        Optional<Condition> condition = invented.conditions().condition(subject);
        return condition.flatMap(asked -> alikes.of(asked, random).stream()
                .flatMap(other -> ask(asked, other, random).stream())
                .findFirst());
    }

    private Optional<SignQuestion> ask(Condition asked, Condition other, Random random) {
        Person person = invented.person(random);
        Invented.Said truth = invented.said(asked, random);
        Invented.Said rival = invented.beside(truth, other, random);
        Body ill = invented.with(person, truth, 1);
        Body alike = invented.with(person, rival, 1);
        Body healthy = invented.healthy(person);
        List<Manoeuvre> changed = new ArrayList<>(affecting.by(asked).stream()
                .filter(m -> !invented.alike(m, ill, healthy))
                .toList());
        Collections.shuffle(changed, random);
        List<Manoeuvre> telling =
                changed.stream().filter(m -> !invented.alike(m, ill, alike)).toList();
        List<Manoeuvre> silent =
                changed.stream().filter(m -> invented.alike(m, ill, alike)).toList();
        return telling.isEmpty() || silent.size() < LEAST_WRONG
                ? Optional.empty()
                : Optional.of(question(telling.get(0), silent, truth, rival, ill, alike, random));
    }

    private SignQuestion question(
            Manoeuvre telling,
            List<Manoeuvre> silent,
            Invented.Said truth,
            Invented.Said rival,
            Body ill,
            Body alike,
            Random random) {
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

package org.manubrium.learning.question;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Person;

/** Which of two patients has it: the other has something easily taken for it, and the same manoeuvre shows the difference. */
final class TellAsker implements Asker {
    private static final String A = "Patient A";
    private static final String B = "Patient B";

    private final Invented invented;
    private final Affecting affecting;
    private final Alikes alikes;
    private final Written written;

    TellAsker(Invented invented, Affecting affecting) {
        this.invented = invented;
        this.affecting = affecting;
        this.alikes = new Alikes(affecting);
        this.written = new Written(invented);
    }

    @Override
    public String kind() {
        return "tell";
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
        return affecting.by(asked).stream()
                .filter(m -> !invented.alike(m, ill, alike) && !invented.alike(m, ill, healthy))
                .findFirst()
                .map(m -> question(m, truth, rival, ill, alike, random));
    }

    private SignQuestion question(
            Manoeuvre manoeuvre, Invented.Said truth, Invented.Said rival, Body ill, Body alike, Random random) {
        List<Item> items = invented.shown(manoeuvre, ill, alike);
        boolean first = random.nextBoolean();
        String here = first ? A : B;
        String there = first ? B : A;
        String why = here + " has " + truth.words() + " (" + written.readings(ill, manoeuvre, items) + "); " + there
                + " has " + rival.words() + " (" + written.readings(alike, manoeuvre, items) + ").";
        return new SignQuestion(
                fact(truth.condition().id()),
                "Which of these two has " + truth.words() + "?",
                List.of(
                        invented.panel(A, first ? ill : alike, manoeuvre, items),
                        invented.panel(B, first ? alike : ill, manoeuvre, items)),
                List.of(A, B),
                first ? 0 : 1,
                why,
                Written.origin(truth.condition(), List.of(manoeuvre)));
    }
}

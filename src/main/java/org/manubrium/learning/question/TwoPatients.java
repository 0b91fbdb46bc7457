package org.manubrium.learning.question;

import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Person;

/** The same person with a disease, with one easily taken for it, and in health. */
record TwoPatients(Invented invented, Invented.Said truth, Invented.Said rival, Body ill, Body alike, Body healthy) {

    /** The first question that can be asked of a disease and one of its likenesses. */
    static Optional<SignQuestion> ask(
            Invented invented,
            Affecting affecting,
            String subject,
            Random random,
            Function<TwoPatients, Optional<SignQuestion>> ask) {
        return invented.conditions()
                .condition(subject)
                .flatMap(asked -> new Alikes(affecting)
                        .of(asked, random).stream()
                                .flatMap(other -> ask.apply(draw(invented, asked, other, random)).stream())
                                .findFirst());
    }

    private static TwoPatients draw(Invented invented, Condition asked, Condition other, Random random) {
        Person person = invented.person(random);
        Invented.Said truth = invented.said(asked, random);
        Invented.Said rival = invented.beside(truth, other, random);
        return new TwoPatients(
                invented,
                truth,
                rival,
                invented.with(person, truth, 1),
                invented.with(person, rival, 1),
                invented.healthy(person));
    }

    /** Whether the disease changes what a manoeuvre reads. */
    boolean changed(Manoeuvre manoeuvre) {
        return !invented.alike(manoeuvre, ill, healthy);
    }

    /** Whether a manoeuvre reads differently in the two. */
    boolean told(Manoeuvre manoeuvre) {
        return !invented.alike(manoeuvre, ill, alike);
    }
}

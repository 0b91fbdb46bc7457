package org.manubrium.learning.question;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;

/** Which of two patients has it: the other has something easily taken for it, and the same manoeuvre shows the difference. */
final class TellAsker implements Asker {
    private static final String A = "Patient A";
    private static final String B = "Patient B";

    private final Invented invented;
    private final Affecting affecting;
    private final Written written;

    TellAsker(Invented invented, Affecting affecting) {
        this.invented = invented;
        this.affecting = affecting;
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
        return TwoPatients.ask(
                invented,
                affecting,
                subject,
                random,
                two -> affecting.by(two.truth().condition()).stream()
                        .filter(m -> two.told(m) && two.changed(m))
                        .findFirst()
                        .map(manoeuvre -> question(manoeuvre, two, random)));
    }

    private SignQuestion question(Manoeuvre manoeuvre, TwoPatients two, Random random) {
        Invented.Said truth = two.truth();
        Invented.Said rival = two.rival();
        Body ill = two.ill();
        Body alike = two.alike();
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

package org.manubrium.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Expectation;
import org.manubrium.marking.key.Expectation.Expected;

/**
 * What the student expected before examining, beside what the body model says and what was there. Counts for nothing: a
 * first guess is there to be changed. An answer reads "diagnosis=manoeuvre;manoeuvre"; what is said after the first
 * manoeuvre is no expectation.
 */
final class Expectations {
    static final String QUESTION = "expect";

    /** So many of each are read: naming every sign must not pay. */
    private static final int MOST = 3;

    private final CompiledKey key;

    Expectations(CompiledKey key) {
        this.key = key;
    }

    List<String> notes(Attempt attempt) {
        if (key.conclusion().expected().isEmpty()) {
            return List.of();
        }
        return said(attempt).stream()
                .filter(text -> text.contains("="))
                .limit(2)
                .map(this::note)
                .toList();
    }

    private static List<String> said(Attempt attempt) {
        List<String> said = List.of();
        for (Logged logged : attempt.events()) {
            if (logged.event() instanceof Event.Probed) {
                return said;
            }
            if (logged.event() instanceof Event.Answered answered
                    && answered.question().equals(QUESTION)) {
                said = answered.answer();
            }
        }
        return said;
    }

    private String note(String text) {
        String diagnosis = text.substring(0, text.indexOf('='));
        List<String> named = Arrays.stream(text.substring(text.indexOf('=') + 1).split(";", -1))
                .filter(id -> !id.isEmpty())
                .distinct()
                .limit(MOST)
                .toList();
        Optional<Expectation> expected = key.conclusion().expected().stream()
                .filter(e -> e.diagnosis().equals(diagnosis))
                .findFirst();
        return expected.map(e -> compared(e, named))
                .orElseGet(() -> "Before examining you thought of " + diagnosis.replace('-', ' ')
                        + ", which is not among what this case weighs; its signs were not worked out.");
    }

    private String compared(Expectation expectation, List<String> named) {
        List<String> right = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        named.forEach(id -> (expectation.expects(id) ? right : wrong).add(name(id)));
        StringBuilder note = new StringBuilder("Before examining you thought of " + expectation.name() + ". ");
        note.append(right.size() + " of " + named.size() + " signs you expected of it would be there");
        note.append(right.isEmpty() ? "." : ": " + Say.list(right) + ".");
        if (!wrong.isEmpty()) {
            note.append(" It would leave as it is: " + Say.list(wrong) + ".");
        }
        List<String> missed = expectation.signs().stream()
                .filter(sign -> essential(sign.manoeuvre()) && !named.contains(sign.manoeuvre()))
                .map(Expected::name)
                .limit(MOST)
                .toList();
        if (!missed.isEmpty()) {
            note.append(" It would also change, among what matters here: " + Say.list(missed) + ".");
        }
        return note.append(" In this patient " + found(named)).toString();
    }

    private String found(List<String> named) {
        List<String> there =
                named.stream().filter(this::abnormal).map(this::name).toList();
        return there.isEmpty()
                ? "none of the signs you expected was there."
                : "this was there of what you expected: " + Say.list(there) + ".";
    }

    private boolean essential(String manoeuvre) {
        return key.essentials().stream()
                .anyMatch(line -> line.item().manoeuvre().equals(manoeuvre));
    }

    private boolean abnormal(String manoeuvre) {
        return key.lines().stream()
                .filter(line -> line.item().manoeuvre().equals(manoeuvre))
                .anyMatch(line -> line.forms().stream().anyMatch(form -> !form.normal()));
    }

    private String name(String manoeuvre) {
        return key.lines().stream()
                .filter(line -> line.item().manoeuvre().equals(manoeuvre))
                .map(line -> line.name())
                .findFirst()
                .orElse(manoeuvre);
    }
}

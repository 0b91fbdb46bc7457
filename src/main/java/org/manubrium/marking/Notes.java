package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.marking.credit.DifferentialRule;
import org.manubrium.marking.credit.Guess;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;

/** What is worth knowing and counts for nothing: confidence, and words kept for the teacher. */
final class Notes {
    private static final String OTHER = "other:";

    private Notes() {}

    static List<String> of(CompiledKey key, Attempt attempt) {
        List<String> notes = new ArrayList<>();
        List<Guess> guesses = Guess.parse(attempt.answer(Event.CONCLUSION, "differential"));
        guesses.stream()
                .filter(g -> key.conclusion().truths().stream().anyMatch(t -> t.accepts(g.diagnosis())))
                .filter(g -> g.confidence().isPresent())
                .forEach(g -> notes.add("You were " + g.confidence().getAsInt() + " per cent sure of what was right."));
        if (guesses.size() > DifferentialRule.LONGEST) {
            notes.add("More than " + DifferentialRule.LONGEST + " diagnoses were named; the rest were not read.");
        }
        attempt.standing().stream()
                .filter(word -> word.startsWith(OTHER))
                .forEach(word -> notes.add("Kept for your teacher, not marked: " + word.substring(OTHER.length())));
        return notes;
    }
}

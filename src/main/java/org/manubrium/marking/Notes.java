package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.credit.DifferentialRule;
import org.manubrium.marking.credit.Guess;
import org.manubrium.marking.credit.QuadraticRule;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;

/** What is worth knowing and counts for nothing: confidence, and words kept for the teacher. */
final class Notes {
    private static final String OTHER = "other:";

    private Notes() {}

    /** Said once for the sheet; each line that does not score says so too. */
    private static List<String> unscored(List<Domain> domains) {
        long lines = domains.stream()
                .flatMap(domain -> domain.lines().stream())
                .filter(line -> !line.scored())
                .count();
        String all =
                domains.stream().noneMatch(Domain::scored) ? " Nothing else was asked, so that there is no mark." : "";
        return lines == 0
                ? List.of()
                : List.of((lines == 1 ? "1 line does" : lines + " lines do")
                        + " not score: they stand on facts that nobody here has checked. They earn nothing, cost"
                        + " nothing, and are marked again when a teacher confirms the facts." + all);
    }

    static List<String> of(CompiledKey key, Attempt attempt, List<Domain> domains) {
        List<String> notes = new ArrayList<>(unscored(domains));
        List<Guess> guesses = Guess.parse(attempt.answer(Event.CONCLUSION, "differential"));
        guesses.stream()
                .filter(g -> key.conclusion().truths().stream().anyMatch(t -> t.accepts(g.diagnosis())))
                .filter(g -> g.confidence().isPresent())
                .forEach(g -> notes.add("You were " + g.confidence().getAsInt() + " per cent sure of what was right."));
        List<Sureness.Judged> judged = Sureness.of(key, attempt);
        if (!judged.isEmpty()) {
            double score = judged.stream()
                    .mapToDouble(j -> QuadraticRule.score(j.percent() / 100.0, j.right()))
                    .average()
                    .orElseThrow();
            notes.add("How sure you were scores " + Say.number(score)
                    + " of 1, beside the mark: each diagnosis scores 1 less"
                    + " the square of the distance between what you said and what was so, and so saying what you believe"
                    + " scores best in the long run.");
        }
        if (guesses.size() > DifferentialRule.LONGEST) {
            notes.add("More than " + DifferentialRule.LONGEST + " diagnoses were named; the rest were not read.");
        }
        notes.addAll(new Deferrals(key, attempt).notes());
        notes.addAll(new Expectations(key).notes(attempt));
        attempt.answer(Event.CONCLUSION, "summary").stream()
                .filter(text -> !text.isBlank())
                .forEach(text ->
                        notes.add("What you would tell your senior, kept for your teacher and not marked: " + text));
        attempt.standing().stream()
                .filter(word -> word.startsWith(OTHER))
                .forEach(word -> notes.add("Kept for your teacher, not marked: " + word.substring(OTHER.length())));
        return notes;
    }
}

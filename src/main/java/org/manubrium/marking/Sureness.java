package org.manubrium.marking;

import java.util.List;
import org.manubrium.marking.credit.Guess;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;

/** How sure a student was of each diagnosis named in the conclusion, and whether it was so. */
public final class Sureness {
    private Sureness() {}

    /** One diagnosis; one named without a confidence is no judgement, and not one of half. */
    public record Judged(int percent, boolean right) {}

    public static List<Judged> of(CompiledKey key, List<Logged> events) {
        return of(key, new Attempt(events));
    }

    /**
     * How good the chances were that were given, 0..1: one less the mean square of what each diagnosis of the differential
     * was off, one that was not named standing at nothing, and the same of what was named beside it. Nothing for those who
     * gave no chance. Naming what is right, with whatever chance, never lowers it.
     */
    static double score(CompiledKey key, Attempt attempt) {
        List<Guess> sure = Guess.parse(attempt.answer(Event.CONCLUSION, "differential")).stream()
                .filter(guess -> guess.confidence().isPresent())
                .toList();
        if (sure.isEmpty()) {
            return 0;
        }
        double off = 0;
        int known = 0;
        for (Diagnosis diagnosis : key.conclusion().differential()) {
            double said = sure.stream()
                    .filter(guess -> diagnosis.accepts(guess.diagnosis()))
                    .mapToDouble(guess -> guess.confidence().orElse(0) / 100.0)
                    .max()
                    .orElse(0);
            double truth = key.conclusion().truths().stream().anyMatch(t -> t.accepts(diagnosis.id())) ? 1 : 0;
            off += (said - truth) * (said - truth);
            known++;
        }
        for (Guess guess : sure) {
            if (key.conclusion().differential().stream().noneMatch(d -> d.accepts(guess.diagnosis()))) {
                off += Math.pow(guess.confidence().orElse(0) / 100.0, 2);
                known++;
            }
        }
        return known == 0 ? 0 : Math.max(0, 1 - off / known);
    }

    static List<Judged> of(CompiledKey key, Attempt attempt) {
        return Guess.parse(attempt.answer(Event.CONCLUSION, "differential")).stream()
                .filter(guess -> guess.confidence().isPresent())
                .map(guess -> new Judged(
                        guess.confidence().getAsInt(),
                        key.conclusion().truths().stream().anyMatch(truth -> truth.accepts(guess.diagnosis()))))
                .toList();
    }
}

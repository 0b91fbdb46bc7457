package org.manubrium.marking;

import java.util.List;
import org.manubrium.marking.credit.Guess;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;

/** How sure a student was of each diagnosis named in the conclusion, and whether it was so. */
public final class Sureness {
    private Sureness() {}

    /** One diagnosis; one named without a confidence is no judgement, and not one of half. */
    public record Judged(int percent, boolean right) {}

    public static List<Judged> of(CompiledKey key, List<Logged> events) {
        return of(key, new Attempt(events));
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

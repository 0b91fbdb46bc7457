package org.manubrium.school.signdesk;

import java.util.Optional;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;

/**
 * The patient whose sign is to be seen.
 *
 * @param condition the id of a condition; empty for health
 * @param side of a condition that is said with one
 * @param level one of the condition's levels; its usual one if empty
 * @param severity 0..1
 * @param onset as usual for the condition if empty
 * @param age in years
 */
public record Chosen(
        Optional<String> condition,
        Side side,
        Optional<String> level,
        double severity,
        Optional<Onset> onset,
        int age) {
    /** An age at which nothing has aged yet. */
    public static final int USUAL_AGE = 40;

    public static Chosen health(int age) {
        return new Chosen(Optional.empty(), Side.LEFT, Optional.empty(), 0, Optional.empty(), age);
    }

    static Chosen usual(String condition, Optional<String> level) {
        return new Chosen(Optional.of(condition), Side.LEFT, level, 1, Optional.empty(), USUAL_AGE);
    }
}

package org.manubrium.marking.profile;

import java.util.List;
import org.manubrium.reasoning.Curve.Point;

/**
 * How an attempt went.
 *
 * @param own how the differential narrowed with what the student examined, as the signs truly were
 * @param efficient the same for an examiner who always did what promised most for its time
 * @param threshold how likely a diagnosis must be to be likely enough, 0..1
 * @param idleSeconds seconds spent on steps that told nothing of this differential
 * @param missed the steps of the efficient examiner that the student did not take
 */
public record Profile(
        Handling handling,
        List<Point> own,
        List<Point> efficient,
        double threshold,
        int idleSeconds,
        List<String> missed) {
    public Profile {
        own = List.copyOf(own);
        efficient = List.copyOf(efficient);
        missed = List.copyOf(missed);
    }

    /** The last point of the student's curve. */
    public Point end() {
        return own.get(own.size() - 1);
    }
}

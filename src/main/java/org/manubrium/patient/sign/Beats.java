package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.patient.Body;

/**
 * When the heart beats: the moments of the carotid upstroke in seconds, the first a beat before the clock starts and the
 * last a beat after it ends.
 *
 * @param interval the mean time from beat to beat, in seconds
 */
record Beats(List<Double> upstrokes, double interval) {
    /** Multiples of it, taken without their whole part, fall evenly over 0..1 without ever repeating. */
    private static final double GOLDEN = 0.6180339887498949;

    /** The beats of so many seconds at this rate, in beats a minute; uneven where the atria do not lead them. */
    static Beats of(Body body, double rate, double seconds) {
        double interval = 60 / rate;
        double unled = 1 - Math.min(1, body.quantity("atrial-contraction"));
        double uneven = body.physiology().constant("pulse.uneven") * unled;
        List<Double> upstrokes = new ArrayList<>();
        double next = interval / 2 - interval;
        for (int i = 1; next < seconds + interval; i++) {
            upstrokes.add(next);
            next += interval * (1 + uneven * (2 * (i * GOLDEN % 1) - 1));
        }
        return new Beats(List.copyOf(upstrokes), interval);
    }

    /** An arterial pulse at this moment, 0..1: a quick rise and a slower fall after each upstroke. */
    double pulse(double time) {
        double height = 0;
        for (double upstroke : upstrokes) {
            double since = time - upstroke;
            if (since <= 0) {
                break;
            }
            if (since < 1) {
                height = Math.max(height, since < 0.1 ? since / 0.1 : Math.exp(-(since - 0.1) / 0.15));
            }
        }
        return height;
    }
}

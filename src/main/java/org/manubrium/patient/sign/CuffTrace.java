package org.manubrium.patient.sign;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * A cuff let down slowly on the arm, with what is heard below it: a sound with each beat while the cuff lies between the
 * systolic and the diastolic pressure. Beside it, the pulse of the other wrist.
 */
record CuffTrace(Body body, Circulation circulation) {
    private static final double CUFF_MS = 200;
    private static final double PULSE_MS = 40;
    private static final double PULSE_SECONDS = 15;

    List<Appearance.Curve> curves() {
        Physiology n = body.physiology();
        double from = n.constant("cuff.from");
        double fall = n.constant("cuff.fall");
        double seconds = (from - n.constant("cuff.until")) / fall;
        Beats beats = Beats.of(body, circulation.rate(), seconds);
        return List.of(
                curve("cuff", "mmHg", CUFF_MS, seconds, t -> from - fall * t),
                curve("sound", "share", CUFF_MS, seconds, t -> sound(beats, from, fall, t)),
                pulse());
    }

    /** The pulse at the wrist, long enough to be counted. */
    Appearance.Curve pulse() {
        Beats beats = Beats.of(body, circulation.rate(), PULSE_SECONDS);
        return curve("pulse", "mm", PULSE_MS, PULSE_SECONDS, beats::pulse);
    }

    /** One sample holds the beats of the time until the next. */
    private double sound(Beats beats, double from, double fall, double time) {
        for (double beat : beats.upstrokes()) {
            double cuff = from - fall * beat;
            if (beat >= time
                    && beat < time + CUFF_MS / 1000
                    && cuff <= circulation.systolic()
                    && cuff >= circulation.diastolic()) {
                return 1;
            }
        }
        return 0;
    }

    private static Appearance.Curve curve(
            String name, String unit, double stepMs, double seconds, DoubleUnaryOperator amount) {
        List<Double> samples = IntStream.range(0, (int) Math.round(seconds * 1000 / stepMs))
                .mapToObj(i -> Math.round(amount.applyAsDouble(i * stepMs / 1000) * 100) / 100.0)
                .toList();
        return new Appearance.Curve(name, unit, stepMs, samples);
    }
}

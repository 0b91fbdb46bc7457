package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.manubrium.appearance.Appearance;

/** A minute of the chest rising and falling, as watched from the foot of the bed. */
final class BreathingTrace {
    static final double USUAL_MM = 6;
    private static final double DEEP_MM = 15;
    private static final double SHALLOW_MM = 2.5;
    private static final double STEP_MS = 200;
    private static final int SAMPLES = 301;
    private static final double SPELL_S = 40;
    private static final double BREATHING_S = 26;

    private BreathingTrace() {}

    /** Even breaths at a rate a minute. */
    static Appearance.Curve even(double rate, double mm) {
        return curve(t -> mm * risen(t * rate / 60));
    }

    /** A pattern by its code on the scale. */
    static Appearance.Curve pattern(Onlooker onlooker, String code) {
        return switch (code) {
            case "deep" -> even(24, DEEP_MM);
            case "slow" -> even(6, SHALLOW_MM);
            case "periodic" -> curve(BreathingTrace::waxing);
            case "irregular" -> curve(t -> uneven(onlooker, t));
            default -> even(15, USUAL_MM);
        };
    }

    /** What one breath in moves by. */
    static Appearance.Curve once(String name, double mm) {
        return new Appearance.Curve(name, "mm", 50, samples(80, 50, t -> mm * risen(t / 4)));
    }

    /** How loud a forced breath out is over the windpipe until it can no longer be heard. */
    static Appearance.Curve blown(double seconds) {
        return new Appearance.Curve(
                "sound over the windpipe", "of the loudest", 100, samples(131, 100, t -> loudness(t, seconds)));
    }

    private static double loudness(double t, double seconds) {
        return t >= seconds ? 0 : Math.min(1, t / 0.15) * Math.max(0.1, Math.exp(-2.3 * t / seconds));
    }

    private static double waxing(double t) {
        double within = t % SPELL_S;
        return within > BREATHING_S ? 0 : DEEP_MM * Math.sin(Math.PI * within / BREATHING_S) * risen(within * 0.45);
    }

    private static double uneven(Onlooker onlooker, double t) {
        int breath = (int) Math.floor(t / 3.5);
        double own = onlooker.own("uneven-" + breath);
        double length = 2 + own;
        double within = t - breath * 3.5 - Math.abs(own);
        return within < 0 || within > length ? 0 : (USUAL_MM + 4 * own) * risen(within / length);
    }

    private static double risen(double breaths) {
        return (1 - Math.cos(2 * Math.PI * breaths)) / 2;
    }

    private static Appearance.Curve curve(DoubleUnaryOperator rise) {
        return new Appearance.Curve("chest rises", "mm", STEP_MS, samples(SAMPLES, STEP_MS, rise));
    }

    private static List<Double> samples(int count, double stepMs, DoubleUnaryOperator at) {
        List<Double> samples = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            samples.add(Math.rint(at.applyAsDouble(i * stepMs / 1000) * 100) / 100 + 0.0);
        }
        return List.copyOf(samples);
    }
}

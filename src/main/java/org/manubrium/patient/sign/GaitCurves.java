package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;

/**
 * The angles of the joints through four strides. The affected side takes the pattern's own numbers, the other side those of
 * its "other" row; a pattern without a side has both alike.
 */
final class GaitCurves {
    private static final int STRIDES = 4;
    private static final int SAMPLES = 160;
    /** Lengths from hip to knee and from knee to ankle, in cm. */
    private static final double THIGH = 42;

    private static final double SHANK = 42;

    private GaitCurves() {}

    static List<Appearance.Curve> of(LimbNumbers numbers) {
        double stride = 120 / numbers.of("cadence");
        double stepMs = stride * STRIDES * 1000 / SAMPLES;
        List<Appearance.Curve> found = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            String which = numbers.code().endsWith("-" + side.opposite().word()) ? "other." : "";
            double from = side == Side.RIGHT ? 0 : 0.5;
            found.addAll(leg(numbers, side.word(), which, stepMs, stride, from));
        }
        found.add(LimbNumbers.curve(
                "pelvis, right side down", "degrees", stepMs, SAMPLES, t -> pelvis(numbers, t / stride)));
        found.add(LimbNumbers.curve("trunk to the right", "degrees", stepMs, SAMPLES, t -> trunk(numbers, t / stride)));
        found.add(LimbNumbers.curve("trunk bent forward", "degrees", stepMs, SAMPLES, t -> numbers.of("stoop")));
        found.add(LimbNumbers.curve("feet apart", "cm", stepMs, SAMPLES, t -> numbers.of("base")));
        found.add(LimbNumbers.curve(
                "body beside its way, to the right", "cm", stepMs, SAMPLES, t -> beside(numbers, t / stride)));
        return List.copyOf(found);
    }

    private static List<Appearance.Curve> leg(
            LimbNumbers n, String side, String which, double stepMs, double stride, double from) {
        double hip = n.of(which + "hip") * stretched(n);
        double lift = n.of(which + "lift");
        double knee = n.of(which + "knee");
        double foot = n.of(which + "foot");
        double round = n.of(which + "round");
        double arm = n.of(which + "arm");
        double rough = n.of("rough");
        return List.of(
                LimbNumbers.curve(
                        side + " hip",
                        "degrees",
                        stepMs,
                        SAMPLES,
                        t -> 8
                                + hip * Math.cos(2 * Math.PI * (t / stride + from))
                                + lift * swing(t / stride + from, 0.8, 0.11)
                                + rough * LimbNumbers.uneven(t + from)),
                LimbNumbers.curve(
                        side + " knee",
                        "degrees",
                        stepMs,
                        SAMPLES,
                        t -> 6
                                + 10 * swing(t / stride + from, 0.14, 0.08)
                                + knee * swing(t / stride + from, 0.72, 0.11)),
                LimbNumbers.curve(
                        side + " foot up",
                        "degrees",
                        stepMs,
                        SAMPLES,
                        t -> foot * swing(t / stride + from, 0.8, 0.14) - 14 * swing(t / stride + from, 0.62, 0.07)),
                LimbNumbers.curve(
                        side + " leg outwards",
                        "cm",
                        stepMs,
                        SAMPLES,
                        t -> round * swing(t / stride + from, 0.78, 0.12)),
                LimbNumbers.curve(
                        side + " arm",
                        "degrees",
                        stepMs,
                        SAMPLES,
                        t -> -arm * Math.cos(2 * Math.PI * (t / stride + from))),
                LimbNumbers.curve(
                        side + " elbow",
                        "degrees",
                        stepMs,
                        SAMPLES,
                        t -> n.of(which + "elbow") - arm / 4 * Math.cos(2 * Math.PI * (t / stride + from))));
    }

    /** By how much the tabled hip angles are stretched so that the feet come down as far apart as the tabled step. */
    private static double stretched(LimbNumbers n) {
        boolean left = n.code().endsWith("-left");
        String right = left ? "other.hip" : "hip";
        String other = n.code().endsWith("-right") ? "other.hip" : "hip";
        double low = 0;
        double high = 4;
        for (int i = 0; i < 40; i++) {
            double half = (low + high) / 2;
            double reached = reach(n.of(right) * half) / 2 + reach(n.of(other) * half) / 2;
            if (reached < n.of("step")) {
                low = half;
            } else {
                high = half;
            }
        }
        return low;
    }

    /** How far the heels are apart when both hips are this far from the middle, the knees nearly straight. */
    private static double reach(double hip) {
        return ankle(8 + hip) - ankle(8 - hip);
    }

    private static double ankle(double hip) {
        double slope = Math.toRadians(hip);
        return THIGH * Math.sin(slope) + SHANK * Math.sin(slope - Math.toRadians(6));
    }

    /** A bump once a stride; heel strike is at 0. */
    private static double swing(double strides, double middle, double width) {
        double along = strides - Math.floor(strides);
        return LimbNumbers.bump(along, middle, width) + LimbNumbers.bump(along - 1, middle, width);
    }

    /** The side whose leg swings drops, where the hip that stands cannot hold it. */
    private static double pelvis(LimbNumbers n, double strides) {
        boolean right = n.code().endsWith("-right");
        boolean left = n.code().endsWith("-left");
        double drop = n.of("pelvis");
        double other = n.of("other.pelvis");
        return (left ? drop : right ? other : drop) * swing(strides, 0.78, 0.13)
                - (right ? drop : left ? other : drop) * swing(strides + 0.5, 0.78, 0.13);
    }

    private static double trunk(LimbNumbers n, double strides) {
        double way = n.code().endsWith("-left") ? -1 : 1;
        return n.of("trunk") * Math.sin(2 * Math.PI * (strides + 0.12))
                + n.of("lurch") * LimbNumbers.uneven(strides)
                + way * n.of("veer") * strides / STRIDES;
    }

    /** Who veers leaves the line by so many centimetres a stride; who lurches leaves it now to this side, now to that. */
    private static double beside(LimbNumbers n, double strides) {
        double way = n.code().endsWith("-left") ? -1 : 1;
        return way * n.of("veer") * strides + n.of("lurch") * LimbNumbers.uneven(strides * 0.7) / 2;
    }
}

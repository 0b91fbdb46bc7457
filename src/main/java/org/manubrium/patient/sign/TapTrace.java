package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * The movement of a limb after a tap. Nothing until the mechanical delay; a smooth rise to the peak; then a fall that
 * passes half of the peak at the half-relaxation time. Times in milliseconds from the tap, angles in degrees.
 */
record TapTrace(double delay, double peak, double halfRelaxed, double degrees) {
    static final double STEP_MS = 5;
    private static final int SAMPLES = 200;

    /** The times follow the thyroid state, which slows or quickens both phases; the person's own variation is small. */
    static TapTrace of(Body body, double seen) {
        double thyroid = body.quantity("thyroid-state");
        double own = body.person().variation().of("reflex-speed");
        double peak = phase(body, "reflex.peak", thyroid, own);
        double half = phase(body, "reflex.half-relaxed", thyroid, own);
        double degrees = Math.min(
                body.physiology().constant("reflex.most-degrees"),
                seen * body.physiology().constant("reflex.degrees"));
        return new TapTrace(body.physiology().constant("reflex.delay"), peak, half, degrees);
    }

    private static double phase(Body body, String name, double thyroid, double own) {
        String way = thyroid < 0 ? ".slowed" : ".quickened";
        return body.physiology().constant(name)
                + body.physiology().constant(name + ".spread") * own
                + Math.abs(thyroid) * body.physiology().constant(name + way);
    }

    Appearance.Curve curve(String name) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            samples.add(Math.round(at(i * STEP_MS) * 100) / 100.0);
        }
        return new Appearance.Curve(name, "degrees", STEP_MS, List.copyOf(samples));
    }

    /** The angle so many milliseconds after the tap. */
    double at(double ms) {
        if (ms <= delay) {
            return 0;
        }
        if (ms <= peak) {
            double along = (ms - delay) / (peak - delay);
            return degrees * Math.pow(Math.sin(along * Math.PI / 2), 2);
        }
        double along = (ms - peak) / (halfRelaxed - peak);
        return degrees * Math.pow(2, -Math.pow(along, 1.4));
    }
}

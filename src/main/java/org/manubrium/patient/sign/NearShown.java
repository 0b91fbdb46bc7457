package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** Both eyes following a finger to the nose. */
final class NearShown {
    private static final double STEP_MS = 50;
    private static final int SAMPLES = 60;
    private static final double TURN_DEGREES = 22;

    private NearShown() {}

    static Appearance of(Body body) {
        return new Appearance(
                "eyes-near", List.of(curve(body, Side.RIGHT), curve(body, Side.LEFT)), Complexion.of(body), "");
    }

    private static Appearance.Curve curve(Body body, Side eye) {
        Gaze gaze = new Gaze(body, eye);
        double from = -gaze.outward(Gaze.Target.AHEAD);
        double to = from + TURN_DEGREES * gaze.converging();
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double along = Math.min(1, i / (SAMPLES * 0.8));
            samples.add(Math.round((from + (to - from) * along) * 10) / 10.0);
        }
        return new Appearance.Curve(eye.word() + " inwards", "degrees", STEP_MS, List.copyOf(samples));
    }
}

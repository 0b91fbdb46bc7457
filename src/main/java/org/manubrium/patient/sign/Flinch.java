package org.manubrium.patient.sign;

import java.util.stream.IntStream;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Physiology;

/**
 * How a body answers a touch that hurts, before the patient says a word: it draws away from the hand, and the face is drawn
 * together. Everyone moves a little under a hand.
 */
final class Flinch {
    /** Of the measure of the face. */
    static final String FACE = "eyes and brow drawn together by";

    private static final double STEP_MS = 50;
    private static final int STEPS = 40;
    private static final double LATENCY_MS = 150;
    private static final double RISE_MS = 250;

    private Flinch() {}

    /** How far the body draws away in the two seconds after the touch, mm. */
    static Appearance.Curve away(Physiology physiology, double pain) {
        double most = physiology.constant("flinch.touched")
                + (physiology.constant("flinch.away") - physiology.constant("flinch.touched")) * pain;
        return new Appearance.Curve(
                "draws away from the hand",
                "mm",
                STEP_MS,
                IntStream.rangeClosed(0, STEPS)
                        .mapToObj(i -> TrunkSign.tenths(most * course(i * STEP_MS)))
                        .toList());
    }

    /** Rises to one, then ebbs. */
    private static double course(double ms) {
        double t = Math.max(0, ms - LATENCY_MS) / RISE_MS;
        return t * Math.exp(1 - t);
    }

    /** How far eyes and brow are drawn together at the worst, per cent. */
    static double face(Physiology physiology, double pain) {
        return Math.rint(physiology.constant("flinch.face") * pain);
    }
}

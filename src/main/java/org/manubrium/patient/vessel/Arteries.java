package org.manubrium.patient.vessel;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * The arteries of one side. Along a course, what each narrowing lets pass of the pulse multiplies.
 *
 * <p>Known limits: vessels that go round a narrowing are part of its amount, and both ends of a course are judged at rest.
 */
public record Arteries(Body body, Side side) {

    /** The share of the pulse that reaches an artery, 0..1. */
    public double kept(Artery artery) {
        double kept =
                artery.beyondTheArch() ? 1 - constant("artery.aorta-loses") * body.quantity("aortic-coarctation") : 1;
        for (Artery passed : artery.course()) {
            kept *= 1 - body.quantity(passed.narrow(side));
        }
        return kept;
    }

    /** By how many milliseconds the narrowings of the limb make the pulse come later. */
    public double late(Artery artery) {
        double late = 0;
        for (Artery passed : artery.course()) {
            late += constant("artery.late") * body.quantity(passed.narrow(side));
        }
        return late;
    }

    /** The systolic pressure in an artery of the leg under a cuff, given that of a healthy arm, in mmHg. */
    public double cuffed(Artery artery, double arm) {
        double inside = kept(artery) * arm * constant("artery.ankle-gain");
        return inside + constant("artery.stiff-gain") * body.quantity("artery.stiffness");
    }

    /** The worst narrowing of the limb that still lets some through: only such a one makes a noise there. */
    public double noisy(Artery artery) {
        double worst = 0;
        for (Artery passed : artery.course()) {
            double narrow = body.quantity(passed.narrow(side));
            worst = Math.max(worst, narrow < constant("artery.closed") ? narrow : 0);
        }
        return worst;
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }
}

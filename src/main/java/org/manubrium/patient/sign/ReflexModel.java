package org.manubrium.patient.sign;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/**
 * How lively a tendon reflex is. What the arc still conducts, raised where its descending control is lost and released,
 * silenced while there is shock. 1 is a lively normal answer; the average healthy person shows {@code reflex.typical}.
 */
final class ReflexModel {
    private ReflexModel() {}

    /** The answer to a plain tap, relative to a lively normal one; 0 for none. */
    static double answer(Body body, String arc, Side side) {
        double conducted = body.conduction(body.anatomy().arc(arc, side));
        double release = body.lost(body.anatomy().control(arc, side), Phase.RELEASE);
        double shock = body.lost(body.anatomy().control(arc, side), Phase.SHOCK);
        return liveliness(body, arc) * conducted * (1 + constant(body, "reflex.release-gain") * release) * (1 - shock);
    }

    private static double liveliness(Body body, String arc) {
        double personal =
                1 + constant(body, "reflex.spread") * body.person().variation().of("reflex");
        return constant(body, "reflex.typical") * personal * ageing(body, arc);
    }

    /** The ankle reflex fades with age in the healthy; the others are taken as kept. */
    private static double ageing(Body body, String arc) {
        if (!arc.equals("ankle-reflex")) {
            return 1;
        }
        double years = Math.max(0, body.person().age() - constant(body, "reflex.ankle-age-from"));
        return Math.max(0, 1 - years * constant(body, "reflex.ankle-age-loss"));
    }

    /** What the eye sees of the answer: nothing of one that is too weak to move the limb. */
    static double seen(Body body, double answer, boolean reinforced) {
        double raised = reinforced ? answer * constant(body, "reflex.reinforcement") : answer;
        return raised < constant(body, "reflex.visible") ? 0 : raised;
    }

    private static double constant(Body body, String name) {
        return body.physiology().constant(name);
    }
}

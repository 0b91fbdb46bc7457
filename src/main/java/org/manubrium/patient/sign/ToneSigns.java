package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** The resistance of a limb that is moved by the examiner, first slowly and then quickly. */
final class ToneSigns {
    private static final double STEP_MS = 20;
    private static final int SAMPLES = 120;
    /** How long the two movements take, in seconds. */
    private static final double SLOW = 2;

    private static final double QUICK = 0.6;
    /** Where in a quick movement it catches, as a share of its time, and for how many seconds. */
    private static final double CATCH_AT = 0.35;

    private static final double CATCH_HOLDS = 0.35;

    private ToneSigns() {}

    static Map<String, LimbSign> all() {
        return Map.of(
                "tone-elbow", tone("arm", "biceps-reflex", "elbow-flexion"),
                "tone-wrist", tone("arm", "finger-flexor-reflex", "wrist-extension"),
                "tone-knee", tone("leg", "knee-reflex", "knee-extension"),
                "tone-ankle", tone("leg", "ankle-reflex", "ankle-dorsiflexion"));
    }

    private static LimbSign tone(String area, String arc, String movement) {
        return new LimbSign(
                "tone",
                "usual",
                (body, side) -> read(new LimbState(body, area, side), arc, movement),
                List.of(
                        measured("resists a slow movement with", "N", "slow"),
                        measured("resists a quick movement with at most", "N", "quick")),
                numbers -> List.of(
                        resistance("moved slowly", numbers, "slow", false),
                        resistance("moved quickly", numbers, "quick", true),
                        angle("joint, moved slowly", numbers, area + " " + movement, false),
                        angle("joint, moved quickly", numbers, area + " " + movement, true)),
                (body, side) -> paths(new LimbState(body, area, side), arc, movement));
    }

    /** Released control gives a catch, a lost arc or shock floppiness, a lost drive stiffness all the way. */
    private static String read(LimbState limb, String arc, String movement) {
        Body body = limb.body();
        if (limb.undriven() >= LimbState.constant(body, "limb.drive-lost")) {
            return limb.undriven() >= LimbState.constant(body, "limb.cogwheel-from")
                    ? "jerky-all-through"
                    : "stiff-all-through";
        }
        if (limb.shocked(arc) >= LimbState.constant(body, "limb.shock")) {
            return "floppy";
        }
        double released = limb.released(arc) * limb.arc(arc);
        if (released >= LimbState.constant(body, "limb.spastic-from")) {
            return "catch";
        }
        boolean cut = limb.body().conduction(limb.body().anatomy().lowerMotor(movement, limb.side()))
                < LimbState.constant(body, "limb.floppy-below");
        boolean unsteered = limb.unsteered() >= LimbState.constant(body, "limb.floppy-unsteered");
        return cut || unsteered ? "floppy" : "usual";
    }

    private static List<Strand> paths(LimbState limb, String arc, String movement) {
        Side side = limb.side();
        return List.of(
                new Strand("tone-control", limb.body().anatomy().control(arc, side)),
                limb.drive(),
                limb.lower(movement),
                limb.steering());
    }

    /** How far the joint has been moved; what catches a quick movement holds it up where it catches. */
    private static Appearance.Curve angle(String name, LimbNumbers numbers, String joint, boolean quick) {
        double range = numbers.physiology().constant("limb.passive-range." + joint.replace(' ', '.'));
        double held = quick ? CATCH_HOLDS * numbers.of("sharp") : 0;
        double seconds = quick ? QUICK : SLOW;
        double caught = CATCH_AT * seconds;
        return LimbNumbers.curve(name, "degrees", STEP_MS, SAMPLES, t -> {
            double moved = t <= caught ? t : Math.max(caught, t - held);
            double along = Math.min(1, moved / seconds);
            return range * along * along * (3 - 2 * along);
        });
    }

    /** A catch stops a quick movement early and lets go; stiffness lasts as long as the movement. */
    private static Appearance.Curve resistance(String name, LimbNumbers numbers, String key, boolean quick) {
        double seconds = quick ? QUICK : SLOW;
        double force = numbers.of(key);
        double sharp = numbers.of("sharp");
        double beats = numbers.of("beats");
        return LimbNumbers.curve(name, "N", STEP_MS, SAMPLES, t -> {
            double along = t / seconds;
            if (along > 1) {
                return 0;
            }
            double even = Math.min(1, 9 * Math.min(along, 1 - along));
            double early = quick ? LimbNumbers.bump(along, CATCH_AT, 0.12) : even;
            double shape = sharp * early + (1 - sharp) * even;
            return force * shape * (1 + 0.35 * beats * Math.sin(2 * Math.PI * 5 * t));
        });
    }
}

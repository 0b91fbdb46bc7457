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
                        resistance("moved quickly", numbers, "quick", true)),
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

    /** A catch stops a quick movement early and lets go; stiffness lasts as long as the movement. */
    private static Appearance.Curve resistance(String name, LimbNumbers numbers, String key, boolean quick) {
        double seconds = quick ? 0.6 : 2;
        double force = numbers.of(key);
        double sharp = numbers.of("sharp");
        double beats = numbers.of("beats");
        return LimbNumbers.curve(name, "N", STEP_MS, SAMPLES, t -> {
            double along = t / seconds;
            if (along > 1) {
                return 0;
            }
            double even = Math.sin(Math.PI * Math.min(1, along));
            double early = quick ? LimbNumbers.bump(along, 0.35, 0.12) : even;
            double shape = sharp * early + (1 - sharp) * even;
            return force * shape * (1 + 0.35 * beats * Math.sin(2 * Math.PI * 5 * t));
        });
    }
}

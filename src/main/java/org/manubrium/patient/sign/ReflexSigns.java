package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** What answers where it should not: the thumb to a flicked finger, the other thigh, the fingers to a tap on the radius. */
final class ReflexSigns {
    private static final String FINGERS = "finger-flexor-reflex";
    private static final String RADIUS = "brachioradialis-reflex";

    private ReflexSigns() {}

    static Map<String, LimbSign> all() {
        return Map.of(
                "hoffmann", spread("thumb bends by", FINGERS, false),
                "crossed-adductor", spread("other thigh moves in by", "adductor-reflex", true),
                "radius-tap", radius(),
                "knee-swings", swings());
    }

    private static LimbSign spread(String label, String arc, boolean across) {
        return new LimbSign(
                "flick",
                "still",
                (body, side) -> ReflexModel.answer(body, arc, across ? side.opposite() : side)
                                >= LimbState.constant(body, "limb.spreads-from")
                        ? "answers"
                        : "still",
                List.of(measured(label, "degrees", "turn")),
                numbers -> List.of(answer(label, numbers.of("turn"))),
                (body, side) -> TendonReflexReader.arcAndControl(body, arc, across ? side.opposite() : side));
    }

    private static Appearance.Curve answer(String name, double degrees) {
        return LimbNumbers.curve(name, "degrees", 10, 80, t -> degrees * LimbNumbers.bump(t, 0.22, 0.1));
    }

    /** The tap stretches the fingers too: they answer where their own control is lost and the elbow's arc is cut. */
    private static LimbSign radius() {
        return new LimbSign(
                "radius-tap",
                "elbow",
                ReflexSigns::answered,
                List.of(
                        measured("elbow bends by", "degrees", "elbow"),
                        measured("fingers bend by", "degrees", "fingers")),
                numbers -> List.of(
                        answer("elbow bends", numbers.of("elbow")), answer("fingers bend", numbers.of("fingers"))),
                (body, side) -> {
                    List<Strand> found =
                            new java.util.ArrayList<>(TendonReflexReader.arcAndControl(body, RADIUS, side));
                    found.add(new Strand("control", body.anatomy().control(FINGERS, side)));
                    return found;
                });
    }

    private static String answered(Body body, Side side) {
        boolean elbow = ReflexModel.seen(body, ReflexModel.answer(body, RADIUS, side), true) > 0;
        boolean fingers = ReflexModel.answer(body, FINGERS, side) >= LimbState.constant(body, "limb.spreads-from");
        return elbow ? fingers ? "both" : "elbow" : fingers ? "fingers" : "nothing";
    }

    /** A floppy knee swings like a pendulum after the tap. */
    private static LimbSign swings() {
        return new LimbSign(
                "pendulum",
                "few",
                (body, side) -> {
                    LimbState leg = LimbState.leg(body, side);
                    boolean moves = ReflexModel.seen(body, ReflexModel.answer(body, "knee-reflex", side), false) > 0;
                    return moves && leg.most(leg.unsteered()) ? "many" : "few";
                },
                List.of(measured("swings by at most", "degrees", "size")),
                numbers -> List.of(LimbNumbers.curve(
                        "shin swings",
                        "degrees",
                        25,
                        200,
                        t -> numbers.of("size")
                                * Math.exp(-t / numbers.of("fades"))
                                * Math.sin(2 * Math.PI * 0.95 * t))),
                (body, side) -> List.of(LimbState.leg(body, side).steering()));
    }
}

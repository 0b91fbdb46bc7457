package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * The held arms, and movement that comes by itself where it does not come on asking. Each is a sign with figures; none
 * proves that anyone deceives.
 */
final class FunctionalSigns {
    private FunctionalSigns() {}

    static Map<String, LimbSign> all() {
        Map<String, LimbSign> found = new HashMap<>();
        found.put("drift", drift());
        found.put(
                "hoover",
                returns(
                        "presses the heel down on asking with",
                        "presses it down while the other leg is lifted with",
                        "hip-extension"));
        found.put(
                "hip-abductor-sign",
                returns(
                        "pushes out on asking with",
                        "holds its place while the other leg pushes out with",
                        "hip-abduction"));
        found.put("field-by-distance", field());
        found.put("arms-held", tiring());
        found.put("navel-on-sitting-up", navel());
        return found;
    }

    private static LimbSign drift() {
        return new LimbSign(
                "arm-drift",
                "steady",
                FunctionalSigns::held,
                List.of(measured("hand sinks by", "cm", "sinks"), measured("palm turns in by", "degrees", "turns")),
                numbers -> List.of(
                        sinking("hand below its place", "cm", numbers.of("sinks")),
                        sinking("palm turned in", "degrees", numbers.of("turns"))),
                (body, side) -> List.of(
                        LimbState.arm(body, side).upper("forearm-supination"),
                        LimbState.arm(body, side).lower("shoulder-abduction"),
                        LimbState.arm(body, side).steering()),
                side -> Set.of(Attention.limb("arm", side)));
    }

    private static Appearance.Curve sinking(String name, String unit, double most) {
        return LimbNumbers.curve(name, unit, 100, 201, t -> {
            double along = Math.min(1, t / 15);
            return most * along * along * (3 - 2 * along);
        });
    }

    private static String held(Body body, Side side) {
        LimbState arm = LimbState.arm(body, side);
        double least = number(body, "limb.power-to-hold-arm");
        if (arm.passed("shoulder-abduction") < least) {
            return "cannot";
        }
        if (arm.upperLost("forearm-supination") >= number(body, "limb.drift-from")) {
            return "sinks-turning";
        }
        if (body.quantity(Attention.limb("arm", side)) >= number(body, "limb.attended")) {
            return "sinks-flat";
        }
        return arm.most(arm.unsteered()) ? "rises" : "steady";
    }

    /** Weak on asking, strong by itself; an organic weakness is weak both times. */
    private static LimbSign returns(String asked, String unasked, String movement) {
        return new LimbSign(
                "two-presses",
                "alike",
                (body, side) -> compared(LimbState.leg(body, side), movement),
                List.of(measured(asked, "N", "asked"), measured(unasked, "N", "unasked")),
                numbers -> List.of(press(asked, numbers.of("asked")), press(unasked, numbers.of("unasked"))),
                (body, side) -> List.of(
                        LimbState.leg(body, side).upper(movement),
                        LimbState.leg(body, side).lower(movement)),
                side -> Set.of(Attention.limb("leg", side)));
    }

    private static Appearance.Curve press(String name, double newton) {
        return LimbNumbers.curve(name, "N", 20, 151, t -> {
            double on = Math.max(0, Math.min(1, (t - 0.4) / 0.4));
            return newton * on * on * (3 - 2 * on) * (1 + 0.02 * LimbNumbers.uneven(t));
        });
    }

    private static String compared(LimbState leg, String movement) {
        double weak = number(leg.body(), "power.full");
        boolean asked = leg.power(movement) < weak;
        boolean unasked = leg.passed(movement) < weak;
        return asked && !unasked ? "returns" : asked ? "weak-both" : "alike";
    }

    private static LimbSign field() {
        return new LimbSign(
                "field-by-distance",
                "widens",
                (body, side) ->
                        body.quantity("attended.field") >= number(body, "limb.attended") ? "same-width" : "widens",
                List.of(
                        measured("seen at one metre, wide", "cm", "near"),
                        measured("seen at two metres, wide", "cm", "far")),
                LimbSign.none(),
                (body, side) -> List.of(),
                side -> Set.of("attended.field"));
    }

    /** A junction that tires lets the arms sink within two minutes. */
    private static LimbSign tiring() {
        return new LimbSign(
                "arms-held",
                "holds",
                (body, side) ->
                        LimbState.arm(body, side).passed("shoulder-abduction") < number(body, "limb.power-to-hold-long")
                                ? "sinks"
                                : "holds",
                List.of(measured("held level for", "s", "seconds")),
                numbers -> List.of(LimbNumbers.curve(
                        "arm below level",
                        "degrees",
                        1000,
                        121,
                        t -> Math.max(0, Math.min(70, (t - numbers.of("seconds")) * 2)))),
                (body, side) -> List.of(
                        LimbState.arm(body, side).lower("shoulder-abduction"),
                        LimbState.arm(body, side).upper("shoulder-abduction")));
    }

    /** The navel is drawn towards the stronger half of the wall. */
    private static LimbSign navel() {
        return new LimbSign(
                "navel",
                "stays",
                (body, side) -> drawn(body),
                List.of(measured("navel moves up by", "cm", "up")),
                numbers -> List.of(LimbNumbers.curve("navel above its place", "cm", 25, 81, t -> {
                    double along = Math.max(0, Math.min(1, (t - 0.3) / 0.8));
                    return numbers.of("up") * along * along * (3 - 2 * along);
                })),
                (body, side) -> List.of(
                        new Strand("lower-motor", body.anatomy().supply("lower-belly-wall", Side.RIGHT)),
                        new Strand("lower-motor", body.anatomy().supply("upper-belly-wall", Side.RIGHT)),
                        LimbState.arm(body, Side.RIGHT).upper("sit-up")));
    }

    private static String drawn(Body body) {
        double difference = wall(body, "upper-belly-wall") - wall(body, "lower-belly-wall");
        double least = number(body, "limb.navel-from");
        return difference >= least ? "up" : difference <= -least ? "down" : "stays";
    }

    private static double wall(Body body, String muscle) {
        return (body.conduction(body.anatomy().supply(muscle, Side.RIGHT))
                        + body.conduction(body.anatomy().supply(muscle, Side.LEFT)))
                / 2;
    }

    private static double number(Body body, String name) {
        return LimbState.constant(body, name);
    }
}

package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** Movements that come by themselves: tremor at rest, in held posture, near a target, while copying; and unrest. */
final class TremorSigns {
    private TremorSigns() {}

    static Map<String, LimbSign> all() {
        return Map.of(
                "tremor-rest", tremor(TremorSigns::rest),
                "tremor-posture", tremor(TremorSigns::posture),
                "tremor-target", tremor(TremorSigns::target),
                "tremor-copying", copying(),
                "unrest", unrest());
    }

    private static LimbSign tremor(LimbSign.Read read) {
        return new LimbSign(
                "tremor",
                "none",
                read,
                List.of(measured("shakes by", "mm", "mm")),
                numbers -> List.of(LimbNumbers.curve("finger", "mm", 20, 200, t -> shaking(numbers, t))),
                (body, side) -> List.of(
                        LimbState.arm(body, side).drive(),
                        LimbState.arm(body, side).steering()),
                TremorSigns::moved);
    }

    /** A wave that may grow over the four seconds and may change its rhythm and size from moment to moment. */
    private static double shaking(LimbNumbers numbers, double t) {
        double wander = numbers.of("wander");
        double grown = 1 - numbers.of("grows") * (1 - Math.min(1, t / 3.5));
        double phase = numbers.of("hertz") * t + wander * LimbNumbers.uneven(t / 4);
        double size = 1 - (0.1 + 0.6 * wander) * (1 + LimbNumbers.uneven(t)) / 2;
        return numbers.of("mm") * size * grown * Math.sin(2 * Math.PI * phase);
    }

    private static Set<String> moved(Side side) {
        return Set.of(
                "attended." + side.word() + ".tremor", "hand-tremor." + side.word() + ".posture", "thyroid-state");
    }

    private static String rest(Body body, Side side) {
        return LimbState.arm(body, side).undriven() >= number(body, "limb.rest-tremor-from")
                ? "slow-coarse"
                : attended(body, side);
    }

    private static String attended(Body body, Side side) {
        return body.quantity("attended." + side.word() + ".tremor") >= number(body, "limb.attended")
                ? "uneven-coarse"
                : "none";
    }

    private static String posture(Body body, Side side) {
        boolean shakes = body.quantity("hand-tremor." + side.word() + ".posture") >= number(body, "limb.attended");
        return shakes
                ? "quick-middling"
                : body.quantity("thyroid-state") >= number(body, "limb.thyroid-tremor")
                        ? "quick-fine"
                        : attended(body, side);
    }

    private static String target(Body body, Side side) {
        LimbState arm = LimbState.arm(body, side);
        if (arm.most(arm.unsteered())) {
            return "grows-near";
        }
        boolean shakes = body.quantity("hand-tremor." + side.word() + ".posture") >= number(body, "limb.attended");
        return shakes ? "quick-middling" : "none";
    }

    /** The other hand copies a rhythm: a tremor that is attended to takes that rhythm or stops. */
    private static LimbSign copying() {
        return new LimbSign(
                "tremor-copying",
                "own",
                (body, side) -> attended(body, side).equals("none") ? "own" : "takes-it",
                List.of(measured("rhythm of the other hand", "Hz", "copied")),
                numbers -> List.of(
                        LimbNumbers.curve(
                                "other hand",
                                "mm",
                                20,
                                200,
                                t -> 20 * Math.sin(2 * Math.PI * numbers.of("copied") * t)),
                        LimbNumbers.curve(
                                "hand",
                                "mm",
                                20,
                                200,
                                t -> numbers.of("mm") * Math.sin(2 * Math.PI * numbers.of("hertz") * t))),
                (body, side) -> List.of(),
                side -> Set.of("attended." + side.word() + ".tremor"));
    }

    private static LimbSign unrest() {
        return new LimbSign(
                "unrest",
                "still",
                (body, side) -> unbraked(body, side),
                List.of(measured("moves by at most", "cm", "cm")),
                numbers -> List.of(LimbNumbers.curve(
                        "hand", "cm", 40, 200, t -> numbers.of("cm") * numbers.ownUneven(t * numbers.of("speed")))),
                (body, side) -> List.of(LimbState.arm(body, side).brake()));
    }

    private static String unbraked(Body body, Side side) {
        LimbState arm = LimbState.arm(body, side);
        double lost = arm.unbraked();
        double here = number(body, "limb.plain");
        double flings = number(body, "limb.flings-from");
        return lost >= flings ? "flings" : lost >= here ? "dances" : "still";
    }

    private static double number(Body body, String name) {
        return LimbState.constant(body, name);
    }
}

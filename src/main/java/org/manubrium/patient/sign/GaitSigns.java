package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** Walking: freely, on heels, on toes, heel to toe, and turning. */
final class GaitSigns {
    private static final Set<String> MOVED = Set.of("attended.walking", "attended.right.leg", "attended.left.leg");

    private GaitSigns() {}

    static Map<String, LimbSign> all() {
        Map<String, LimbSign> found = new HashMap<>();
        found.put("gait", walk(true));
        found.put("gait-unwatched", walk(false));
        found.put("heel-walk", step("ankle-dorsiflexion", "toes kept off the floor by", "limb.power-to-walk-on-heels"));
        found.put(
                "toe-walk", step("ankle-plantar-flexion", "heel kept off the floor by", "limb.power-to-walk-on-toes"));
        found.put("tandem-walk", tandem());
        found.put("turning", turning());
        return found;
    }

    private static LimbSign walk(boolean watched) {
        return new LimbSign(
                "gait",
                "usual",
                (body, side) -> Gait.read(body, watched),
                List.of(
                        measured("step length", "cm", "step"),
                        measured("feet apart by", "cm", "base"),
                        measured("steps in a minute", "", "cadence")),
                GaitCurves::of,
                (body, side) -> Gait.paths(body),
                side -> watched ? MOVED : Set.of());
    }

    private static LimbSign step(String movement, String label, String least) {
        return new LimbSign(
                "on-tiptoe",
                "held",
                (body, side) ->
                        LimbState.leg(body, side).power(movement) < LimbState.constant(body, least) ? "sinks" : "held",
                List.of(measured(label, "cm", "height")),
                LimbSign.none(),
                (body, side) -> List.of(
                        LimbState.leg(body, side).lower(movement),
                        LimbState.leg(body, side).upper(movement)),
                side -> Set.of(Attention.limb("leg", side)));
    }

    private static LimbSign tandem() {
        return new LimbSign(
                "tandem",
                "straight",
                (body, side) -> line(body),
                List.of(measured("steps beside the line, of ten", "", "aside")),
                LimbSign.none(),
                (body, side) -> Gait.paths(body),
                side -> MOVED);
    }

    private static String line(Body body) {
        String gait = Gait.read(body, true);
        if (StandingSigns.unsteered(body) || gait.startsWith("stamping") || gait.startsWith("veers")) {
            return "aside";
        }
        return gait.equals("usual") ? "straight" : "awkward";
    }

    private static LimbSign turning() {
        return new LimbSign(
                "turning",
                "quick",
                (body, side) -> turn(body),
                List.of(measured("steps to turn round", "", "steps"), measured("takes", "s", "seconds")),
                LimbSign.none(),
                (body, side) -> Gait.paths(body),
                side -> MOVED);
    }

    private static String turn(Body body) {
        String gait = Gait.read(body, true);
        if (gait.equals("shuffling") || gait.equals("glued")) {
            return "many-steps";
        }
        return StandingSigns.unsteered(body) ? "lurches" : "quick";
    }

    /** The pattern without its side. */
    static String pattern(String code) {
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            if (code.endsWith("-" + side.word())) {
                return code.substring(0, code.length() - side.word().length() - 1);
            }
        }
        return code;
    }
}

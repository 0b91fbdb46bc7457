package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
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
                        measured("steps in a minute", "", "cadence"),
                        measured("feet turned out by", "degrees", "out")),
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
                List.of(measured("steps off the line, of ten", "", "aside")),
                GaitSigns::tenSteps,
                (body, side) -> Gait.paths(body),
                side -> MOVED);
    }

    /** Where each of ten steps falls: those beside the line are spread over the ten. */
    private static List<Appearance.Curve> tenSteps(LimbNumbers numbers) {
        return List.of(LimbNumbers.curve("foot to the right of the line", "cm", 1000, 10, t -> {
            int step = (int) Math.rint(t);
            double way = step % 2 == 0 ? 1 : -1;
            boolean beside = step * 7 % 10 < numbers.of("aside");
            return way * (beside ? 11 + 3 * LimbNumbers.uneven(step) : 1);
        }));
    }

    private static String line(Body body) {
        String gait = Gait.read(body, true);
        if (StandingSigns.unsteered(body) || gait.startsWith("stamping") || gait.startsWith("veers")) {
            return "aside";
        }
        return gait.equals("usual") || gait.startsWith("arm-still") ? "straight" : "awkward";
    }

    private static LimbSign turning() {
        return new LimbSign(
                "turning",
                "quick",
                (body, side) -> turn(body),
                List.of(measured("steps to turn round", "", "steps"), measured("takes", "s", "seconds")),
                numbers -> List.of(
                        LimbNumbers.curve(
                                "turned", "degrees", 50, 121, t -> 180 * Math.min(1, t / numbers.of("seconds"))),
                        LimbNumbers.curve(
                                "trunk leans to the right",
                                "cm",
                                50,
                                121,
                                t -> numbers.of("leans")
                                        * Math.sin(2 * Math.PI * t / 1.3)
                                        * LimbNumbers.bump(t, numbers.of("seconds") / 2, numbers.of("seconds") / 2))),
                (body, side) -> Gait.paths(body),
                side -> MOVED);
    }

    private static String turn(Body body) {
        String gait = Gait.read(body, true);
        if (gait.startsWith("shuffling") || gait.equals("glued")) {
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

package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/** What the cortex makes of touch: shapes, figures, two points, two sides at once; and where on the trunk it changes. */
final class CortexSigns {
    private static final List<String> TRUNK = List.of(
            "c4-top-of-shoulder",
            "t2-armpit",
            "t3-third-space",
            "t4-nipple-level",
            "t5-below-nipple",
            "t6-xiphisternum",
            "t7-quarter-to-navel",
            "t8-halfway-to-navel",
            "t9-three-quarters-to-navel",
            "t10-navel",
            "t11-below-navel",
            "t12-groin",
            "l1-upper-thigh");

    private CortexSigns() {}

    static Map<String, LimbSign> all() {
        return Map.of(
                "object-in-hand", hand("objects named, of five", "named"),
                "figures-on-palm", hand("figures named, of five", "named"),
                "two-points", hand("two points felt apart from", "mm"),
                "two-sides-at-once", extinction(),
                "trunk-level", level());
    }

    private static LimbSign hand(String label, String unit) {
        return new LimbSign(
                "hand-touch",
                "told",
                (body, side) -> told(body, side) ? "told" : "not-told",
                List.of(measured(label, unit, unit)),
                LimbSign.none(),
                (body, side) ->
                        List.of(new Strand("shape", shape(body, side)), new Strand("touch", touch(body, side))));
    }

    private static Pathway shape(Body body, Side side) {
        return body.anatomy().sensory("joint-position", "index-fingertip", side);
    }

    private static Pathway touch(Body body, Side side) {
        return body.anatomy().sensory("light-touch", "index-fingertip", side);
    }

    private static boolean told(Body body, Side side) {
        return body.conduction(shape(body, side)) >= LimbState.constant(body, "limb.shape-from")
                && body.conduction(touch(body, side)) >= LimbState.constant(body, "limb.touch-from");
    }

    /** Each side is felt alone, and one of them is not when both are touched. */
    private static LimbSign extinction() {
        return new LimbSign(
                "two-touches",
                "both",
                (body, side) -> felt(body),
                List.of(
                        measured("right alone felt, of five", "", "right-alone"),
                        measured("left alone felt, of five", "", "left-alone"),
                        measured("right felt when both are touched, of five", "", "right-both"),
                        measured("left felt when both are touched, of five", "", "left-both")),
                LimbSign.none(),
                (body, side) -> {
                    List<Strand> found = new ArrayList<>();
                    for (Side s : List.of(Side.RIGHT, Side.LEFT)) {
                        found.add(new Strand("attending", attending(body, s)));
                        found.add(new Strand("touch", touch(body, s)));
                    }
                    return found;
                });
    }

    private static Pathway attending(Body body, Side side) {
        return body.anatomy().tract("attending to touch", side, Segment.C7, "arm");
    }

    private static String felt(Body body) {
        boolean right = body.conduction(touch(body, Side.RIGHT)) >= LimbState.constant(body, "limb.touch-from");
        boolean left = body.conduction(touch(body, Side.LEFT)) >= LimbState.constant(body, "limb.touch-from");
        if (!right || !left) {
            return right ? "left-numb" : left ? "right-numb" : "neither";
        }
        double missing = LimbState.constant(body, "limb.attending-lost");
        boolean missesRight = body.lost(attending(body, Side.RIGHT), Phase.LOSS) >= missing;
        boolean missesLeft = body.lost(attending(body, Side.LEFT), Phase.LOSS) >= missing;
        return missesRight == missesLeft ? "both" : missesRight ? "misses-right" : "misses-left";
    }

    /** The lowest point of the trunk that still pricks, where all below it do not. */
    private static LimbSign level() {
        return new LimbSign(
                "trunk-line",
                "none",
                CortexSigns::change,
                List.of(measured("begins to prick, above the groin", "cm", "cm")),
                numbers -> List.of(LimbNumbers.curve(
                        "pricks, told by the patient while the pin goes up",
                        "of 10",
                        250,
                        60,
                        t -> t * 4 >= numbers.of("cm") ? 10 : 2)),
                (body, side) -> List.of(
                        new Strand("feeling", body.anatomy().sensory("pin", "t10-navel", side)),
                        new Strand("feeling", body.anatomy().sensory("pin", "l1-upper-thigh", side))));
    }

    private static String change(Body body, Side side) {
        double whole = LimbState.constant(body, "limb.pin-from");
        String lowest = "none";
        for (int i = TRUNK.size() - 1; i >= 0; i--) {
            if (body.conduction(body.anatomy().sensory("pin", TRUNK.get(i), side)) >= whole) {
                return lowest.equals("none")
                        ? "none"
                        : TRUNK.get(i).substring(0, TRUNK.get(i).indexOf('-'));
            }
            lowest = TRUNK.get(i);
        }
        return "above";
    }
}

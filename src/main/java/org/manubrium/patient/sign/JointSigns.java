package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.graded;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Finding;
import org.manubrium.patient.joint.Joint;
import org.manubrium.patient.joint.JointRange;

/** Look, feel and move: the joints of the limbs. */
final class JointSigns {
    private JointSigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "look", look(),
                "warmth", warmth(),
                "swelling", swelling(),
                "tender", tender(),
                "grating", grating(),
                "bulge", bulge(),
                "tap", tap(),
                "active", range(JointRange::active),
                "passive", range(JointRange::passive));
    }

    private static Joint joint(Spot spot) {
        return new Joint(spot.body(), spot.side(), spot.place());
    }

    private static Joint knee(Spot spot) {
        return new Joint(spot.body(), spot.side(), "knee");
    }

    private static QuantitySign look() {
        return chosen(
                JointSigns::seen,
                spot -> new Appearance(
                        "joint-look",
                        List.of(),
                        List.of(
                                measure("soft swelling stands out", joint(spot).swollen(), "mm"),
                                measure("hard edge stands out", joint(spot).bone(), "mm"),
                                measure("leans from its line", joint(spot).leans(), "degrees"),
                                measure("redder than around", redder(spot), "%")),
                        ""));
    }

    private static String seen(Spot spot) {
        Joint joint = joint(spot);
        if (joint.leans() >= spot.constant("joint.leans-from")) {
            return "leaning";
        }
        if (joint.swollen() >= spot.constant("joint.swollen-from")) {
            return redder(spot) >= spot.constant("joint.red-from") ? "red-swollen" : "swollen";
        }
        return joint.bone() >= spot.constant("joint.bone-from") ? "knobbly" : "usual";
    }

    /** Redness over a joint shows less the more melanin the skin holds. */
    private static double redder(Spot spot) {
        double hot = Math.max(0, joint(spot).inflamed() - spot.constant("joint.red-inflamed"));
        return 60 * hot * (1 - 0.6 * spot.body().person().tone().melanin());
    }

    private static QuantitySign warmth() {
        return graded(
                "joint-warmth",
                spot -> warmer(spot),
                spot -> new Appearance(
                        "joint-warmth",
                        List.of(),
                        List.of(
                                measure("skin above it", 31.5, "°C"),
                                measure("skin over it", 31 + warmer(spot), "°C"),
                                measure("skin below it", 31, "°C")),
                        ""));
    }

    private static double warmer(Spot spot) {
        return spot.constant("joint.warms") * joint(spot).inflamed();
    }

    private static QuantitySign swelling() {
        return chosen(
                spot -> {
                    Joint joint = joint(spot);
                    if (joint.fluid() >= spot.constant("joint.fluid-from")) {
                        return "fluid";
                    }
                    if (joint.swollen() >= spot.constant("joint.swollen-from")) {
                        return "boggy";
                    }
                    return joint.bone() >= spot.constant("joint.bone-from") ? "hard" : "none";
                },
                spot -> new Appearance(
                        "joint-feel",
                        List.of(),
                        List.of(
                                measure("gives way under the thumb", joint(spot).swollen() * 0.7, "mm"),
                                measure(
                                        "lifts the other thumb",
                                        Math.sqrt(joint(spot).fluid()) * 0.6,
                                        "mm"),
                                measure("hard edge", joint(spot).bone(), "mm")),
                        ""));
    }

    private static QuantitySign tender() {
        return chosen(
                spot -> {
                    double pain = joint(spot).pain();
                    return pain >= spot.constant("joint.very-tender-from")
                            ? "very-tender"
                            : pain >= spot.constant("joint.tender-from") ? "tender" : "none";
                },
                spot -> new Appearance(
                        "pressed",
                        List.of(),
                        List.of(measure("draws back", 60 * joint(spot).pain(), "mm")),
                        spot.body()
                                .physiology()
                                .saying("joint-pressed", joint(spot).pain())));
    }

    private static QuantitySign grating() {
        return chosen(
                spot -> joint(spot).worn() >= spot.constant("joint.grates-from") ? "grates" : "smooth",
                spot -> new Appearance(
                        "grating",
                        List.of(LimbNumbers.curve(
                                "felt under the palm",
                                "tenths of a mm",
                                20,
                                150,
                                t -> 4
                                        * joint(spot).worn()
                                        * LimbNumbers.uneven(40 * t)
                                        * LimbNumbers.bump(t, 1.5, 0.8))),
                        List.of(),
                        ""));
    }

    /** A little fluid is stroked out of the inner hollow and comes back when the outer side is pressed; much is too tight. */
    private static QuantitySign bulge() {
        return chosen(
                spot -> bulges(spot) > 0 ? "bulges" : "stays-hollow",
                spot -> new Appearance(
                        "knee-bulge",
                        List.of(LimbNumbers.curve(
                                "inner hollow",
                                "mm",
                                50,
                                80,
                                t -> bulges(spot) * LimbNumbers.bump(t, 1.6, 0.6)
                                        + knee(spot).swollen() * 0.3)),
                        List.of(),
                        ""));
    }

    private static double bulges(Spot spot) {
        double fluid = knee(spot).fluid();
        boolean moves = fluid >= spot.constant("knee.bulge-from") && fluid <= spot.constant("knee.bulge-to");
        return moves ? 2 + Math.sqrt(fluid) * 0.5 : 0;
    }

    /** The kneecap floats on enough fluid, and knocks on the bone below when it is pushed down. */
    private static QuantitySign tap() {
        return chosen(
                spot -> floats(spot) > 0 ? "taps" : "rests",
                spot -> new Appearance(
                        "kneecap",
                        List.of(LimbNumbers.curve(
                                "kneecap goes down",
                                "mm",
                                20,
                                60,
                                t -> Math.min(floats(spot), 40 * Math.max(0, t - 0.2)) + 0.3)),
                        List.of(),
                        ""));
    }

    private static double floats(Spot spot) {
        double fluid = knee(spot).fluid();
        return fluid >= spot.constant("knee.tap-from") ? Math.min(9, fluid / 10) : 0;
    }

    private static QuantitySign range(ToDoubleFunction<JointRange> of) {
        return measured(
                5,
                spot -> of.applyAsDouble(moved(spot)),
                spot -> new Appearance(
                        "goniometer",
                        List.of(LimbNumbers.curve(
                                "angle",
                                "degrees",
                                100,
                                31,
                                t -> Math.rint(of.applyAsDouble(moved(spot))) * Math.min(1, t / 2.5))),
                        List.of(),
                        spot.body()
                                .physiology()
                                .saying("joint-moved", moved(spot).joint().pain())),
                (spot, finding) ->
                        ((Finding.Measured) finding).value() >= moved(spot).least());
    }

    /** A movement is written joint-of-movement: "shoulder-abduction" is one of the shoulder. */
    private static JointRange moved(Spot spot) {
        String name = Joint.NAMES.stream()
                .filter(joint -> spot.place().startsWith(joint))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no joint moves in " + spot.place()));
        return new JointRange(new Joint(spot.body(), spot.side(), name), spot.place());
    }
}

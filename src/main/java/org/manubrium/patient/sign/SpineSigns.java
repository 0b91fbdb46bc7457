package org.manubrium.patient.sign;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.trunk.Spot;

/** The spine: its curves, what fingers meet down it, what hurts, and how far it moves. */
final class SpineSigns {
    private static final List<String> STRETCHES = List.of("neck", "chest", "loins");
    private static final String[] WEDGES =
            STRETCHES.stream().map(s -> "spine." + s + ".wedge").toArray(String[]::new);

    private SpineSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "look", look(),
                "hump", hump(),
                "fingers", fingers(),
                "tap", tap(),
                "schober", schober(),
                "neck-turn", neckTurn(),
                "side-bend", sideBend(),
                "wall", wall());
    }

    private static double sharpest(Spot spot) {
        return STRETCHES.stream()
                .mapToDouble(s -> spot.of("spine." + s + ".wedge"))
                .max()
                .orElse(0);
    }

    /** The spine grows rounder with age, and over every wedged vertebra of the chest. */
    private static double round(Spot spot) {
        return spot.of("spine.round") + 0.12 * spot.aged() + 0.5 * spot.of("spine.chest.wedge");
    }

    private static double curve(Spot spot, Side side) {
        return spot.body().quantity("spine." + side.word() + ".curve");
    }

    private static TrunkSign look() {
        return TrunkSign.word("spine-look", Set.of("straight"), SpineSigns::lookOf)
                .shows("round of the chest", "degrees", SpineSigns::round)
                .shows("sharpest bend", "degrees", SpineSigns::sharpest)
                .shows("where it bends sharpest, from the neck down", "cm", SpineSigns::whereSharpest)
                .shows("hollow of the loins", "degrees", spot -> spot.of("spine.hollow"))
                .shows("bows out to the right", "degrees", spot -> curve(spot, Side.RIGHT))
                .shows("bows out to the left", "degrees", spot -> curve(spot, Side.LEFT))
                .explained(spot -> switch (lookOf(spot)) {
                    case "bump" -> List.of(WEDGES);
                    case "rounded" -> List.of("spine.round", "spine.chest.wedge");
                    case "flat-loins" -> List.of("spine.hollow");
                    default -> List.of("spine.right.curve", "spine.left.curve");
                });
    }

    private static String[] joined(String[] some, String... others) {
        return java.util.stream.Stream.concat(java.util.Arrays.stream(some), java.util.Arrays.stream(others))
                .toArray(String[]::new);
    }

    private static double whereSharpest(Spot spot) {
        double sharpest = sharpest(spot);
        List<Double> at = List.of(6.0, 26.0, 46.0);
        for (int i = 0; i < at.size(); i++) {
            if (sharpest > 0 && spot.of("spine." + STRETCHES.get(i) + ".wedge") == sharpest) {
                return at.get(i);
            }
        }
        return 26;
    }

    private static String lookOf(Spot spot) {
        if (sharpest(spot) >= spot.constant("spine.bump")) {
            return "bump";
        }
        double bowed = spot.constant("spine.bowed");
        if (Math.max(curve(spot, Side.RIGHT), curve(spot, Side.LEFT)) >= bowed) {
            return curve(spot, Side.RIGHT) > curve(spot, Side.LEFT) ? "bows-right" : "bows-left";
        }
        if (round(spot) >= spot.constant("spine.rounded")) {
            return "rounded";
        }
        return spot.of("spine.hollow") < spot.constant("spine.flat") ? "flat-loins" : "straight";
    }

    private static double raised(Spot spot) {
        return Math.max(
                0, 0.5 * (curve(spot, spot.side()) - curve(spot, spot.side().opposite())));
    }

    private static TrunkSign hump() {
        return TrunkSign.number("rib-hump", "mm", SpineSigns::raised, "zero", "spine.hump-most")
                .shows("ribs on this side higher by", "mm", SpineSigns::raised)
                .needs("spine.right.curve", "spine.left.curve");
    }

    private static TrunkSign fingers() {
        return TrunkSign.word("spine-fingers", Set.of("even"), SpineSigns::fingersOf)
                .shows("one spine behind the next by", "mm", spot -> 0.45 * wedge(spot) + spot.own("spines") * 0.8 + 1)
                .shows("one spine in front of the next by", "mm", spot -> spot.of("spine.@place.slip"))
                .explained(spot -> List.of("spine.@place." + (fingersOf(spot).equals("drops-in") ? "slip" : "wedge")));
    }

    private static double wedge(Spot spot) {
        return spot.of("spine.@place.wedge");
    }

    private static String fingersOf(Spot spot) {
        if (wedge(spot) >= spot.constant("spine.bump")) {
            return "stands-out";
        }
        return spot.of("spine.@place.slip") >= spot.constant("spine.step-mm") ? "drops-in" : "even";
    }

    private static TrunkSign tap() {
        return TrunkSign.grade("spine-tap", "spine-tap", Set.of("none"), spot -> spot.of("spine.@place.sore"))
                .flinches(spot -> spot.of("spine.@place.sore"))
                .says("spine-tap", spot -> spot.of("spine.@place.sore"))
                .needs("spine.@place.sore");
    }

    private static TrunkSign schober() {
        return TrunkSign.number("schober", "cm", SpineSigns::opens, "schober.least", "schober.most")
                .shows("standing, between the marks", "cm", spot -> 15)
                .shows("bent forwards, between the marks", "cm", spot -> 15 + opens(spot))
                .needs("spine.loins-stiff");
    }

    private static double opens(Spot spot) {
        double healthy = spot.constant("schober.healthy") - 0.015 * spot.aged() + 0.5 * spot.own("spine-bends");
        return TrunkSign.tenths(healthy * (1 - spot.of("spine.loins-stiff")));
    }

    private static TrunkSign neckTurn() {
        return TrunkSign.number("neck-turn", "degrees", SpineSigns::turns, "neck-turn.least", "neck-turn.most")
                .shows("chin turns by", "degrees", SpineSigns::turns)
                .needs("spine.neck-stiff");
    }

    private static double turns(Spot spot) {
        double healthy = spot.constant("neck-turn.healthy") - 0.3 * spot.aged() + 5 * spot.own("neck-turns");
        return Math.rint(healthy * (1 - spot.of("spine.neck-stiff")));
    }

    private static TrunkSign sideBend() {
        return TrunkSign.number("side-bend", "cm", SpineSigns::bends, "side-bend.least", "side-bend.most")
                .shows("fingertip slides down by", "cm", SpineSigns::bends)
                .needs("spine.loins-stiff");
    }

    private static double bends(Spot spot) {
        double healthy = spot.constant("side-bend.healthy") - 0.06 * spot.aged() + 2 * spot.own("side-bends");
        return TrunkSign.tenths(healthy * (1 - spot.of("spine.loins-stiff")));
    }

    private static TrunkSign wall() {
        return TrunkSign.number("wall-gap", "cm", SpineSigns::gap, "zero", "wall.most")
                .shows("back of the head to the wall", "cm", SpineSigns::gap)
                .needs(joined(WEDGES, "spine.round"));
    }

    private static double gap(Spot spot) {
        return Math.max(0, 0.22 * (round(spot) + 0.5 * sharpest(spot) - spot.constant("wall.reaches")));
    }
}

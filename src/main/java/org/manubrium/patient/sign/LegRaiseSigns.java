package org.manubrium.patient.sign;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.manubrium.anatomy.Segment;
import org.manubrium.patient.trunk.Roots;
import org.manubrium.patient.trunk.Spot;

/** Pulling on the roots of the leg: the straight leg raised, and the thigh drawn back. */
final class LegRaiseSigns {
    private LegRaiseSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of("straight-leg", straightLeg(), "straight-leg-pain", straightLegPain(), "femoral", femoral());
    }

    private static double sore(Spot spot, Map<Segment, Double> pulled) {
        return new Roots(spot.body(), spot.side()).sore(pulled);
    }

    private static double here(Spot spot) {
        return sore(spot, Roots.SCIATIC);
    }

    /** A very sore root is pulled by the other leg as well, unless it is lost and numb. */
    private static double across(Spot spot) {
        double sore = here(spot.across());
        boolean crosses = sore >= spot.constant("leg-raise.crosses") && sore < spot.constant("leg-raise.numb");
        return crosses ? sore : 0;
    }

    /** How far the hamstrings let a painless leg come, degrees. */
    private static double hamstrings(Spot spot) {
        return spot.constant("leg-raise.healthy") - 0.1 * spot.aged() + 7 * spot.own("hamstrings");
    }

    private static double angle(Spot spot) {
        double ofRoot = stopped(spot, here(spot), "leg-raise.per-sore");
        double crossed = stopped(spot, across(spot), "leg-raise.per-crossed");
        return Math.rint(Math.min(hamstrings(spot), Math.min(ofRoot, crossed)));
    }

    private static double stopped(Spot spot, double sore, String degrees) {
        boolean felt = sore >= spot.constant("leg-raise.felt");
        return felt ? spot.constant("leg-raise.stops-from") - spot.constant(degrees) * sore : 180;
    }

    /** What the leg says: 0 tight, 0.5 pain in the other leg, 1 pain down this leg. */
    private static double shot(Spot spot) {
        double felt = spot.constant("leg-raise.felt");
        return here(spot) >= felt ? 1 : across(spot) >= felt ? 0.5 : 0;
    }

    private static TrunkSign straightLeg() {
        return TrunkSign.number("leg-raise", "degrees", LegRaiseSigns::angle, "leg-raise.least", "leg-raise.most")
                .shows("leg comes up to", "degrees", LegRaiseSigns::angle)
                .says("leg-raise", LegRaiseSigns::shot)
                .along(spot -> strands(spot, Roots.SCIATIC, true));
    }

    private static TrunkSign straightLegPain() {
        return TrunkSign.word("leg-raise", Set.of("tight"), spot -> {
                    double shot = shot(spot);
                    return shot == 1 ? "down-leg" : shot > 0 ? "other-leg" : "tight";
                })
                .shows("leg comes up to", "degrees", LegRaiseSigns::angle)
                .says("leg-raise", LegRaiseSigns::shot)
                .along(spot -> strands(spot, Roots.SCIATIC, true));
    }

    private static TrunkSign femoral() {
        return TrunkSign.word(
                        "femoral-stretch",
                        Set.of("pulls"),
                        spot -> sore(spot, Roots.FEMORAL) >= spot.constant("leg-raise.felt")
                                ? "front-of-thigh"
                                : "pulls")
                .shows("knee bends to", "degrees", spot -> 128 - 50 * sore(spot, Roots.FEMORAL) + 5 * spot.own("thigh"))
                .says("femoral-stretch", spot -> sore(spot, Roots.FEMORAL))
                .along(spot -> strands(spot, Roots.FEMORAL, false));
    }

    private static List<Strand> strands(Spot spot, Map<Segment, Double> pulled, boolean bothSides) {
        Stream<Spot> sides = bothSides ? Stream.of(spot, spot.across()) : Stream.of(spot);
        return sides.flatMap(s -> new Roots(s.body(), s.side()).ways(pulled).stream())
                .map(way -> new Strand("root-pulled", way))
                .toList();
    }
}

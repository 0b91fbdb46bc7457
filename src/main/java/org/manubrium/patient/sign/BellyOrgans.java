package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.BellySigns.belly;
import static org.manubrium.patient.sign.BellySigns.everywhere;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.trunk.Belly;
import org.manubrium.patient.trunk.Spot;

/** The organs of the belly as they are tapped out and felt. */
final class BellyOrgans {
    private static final String[] EDGE = Stream.concat(
                    Stream.of("liver.span", "liver.firm", "liver.tender", "belly.fluid"),
                    LungQuantity.everywhere(Side.NONE, LungQuantity.TRAPPED).stream())
            .toArray(String[]::new);

    private BellyOrgans() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "liver-edge", liverEdge(),
                "liver-feel", liverFeel(),
                "liver-span", liverSpan(),
                "spleen-note", spleenNote(),
                "spleen-edge", spleenEdge(),
                "kidney", kidney(),
                "aorta-width", aortaWidth(),
                "aorta-push", aortaPush());
    }

    private static double edge(Spot spot) {
        Belly belly = belly(spot);
        return belly.liverFelt() ? belly.liverEdge() : 0;
    }

    private static TrunkSign liverEdge() {
        return TrunkSign.number("liver-edge", "cm", BellyOrgans::edge, "zero", "liver.edge-most")
                .shows("edge below the ribs, breath in", "cm", BellyOrgans::edge)
                .shows(
                        "edge below the ribs, breath out",
                        "cm",
                        spot -> Math.max(0, edge(spot) - spot.constant("liver.breath")))
                .needs(EDGE);
    }

    private static double beat(Spot spot) {
        double stroke = spot.of("tricuspid-leak") * Math.max(0, spot.of("right-atrial-pressure") - 8);
        return Math.max(0, 0.5 * stroke);
    }

    private static TrunkSign liverFeel() {
        return TrunkSign.word("liver-feel", Set.of("not-felt", "soft"), BellyOrgans::liverFeelOf)
                .shows("edge met", "cm", BellyOrgans::edge)
                .shows("gives way at 10 N by", "mm", spot -> met(spot) * Math.max(1, 9 - 9 * spot.of("liver.firm")))
                .shows("uneven under the fingers by", "mm", spot -> met(spot) * 15 * spot.of("liver.lumps"))
                .shows("lifts in time with the heart by", "mm", spot -> met(spot) * beat(spot))
                .says("belly-press", spot -> met(spot) * spot.of("liver.tender"))
                .explained(spot -> switch (liverFeelOf(spot)) {
                    case "pulsing" -> List.of("tricuspid-leak");
                    case "hard-humps" -> List.of("liver.lumps");
                    case "sore-smooth" -> List.of("liver.tender");
                    default -> List.of("liver.firm");
                });
    }

    private static double met(Spot spot) {
        return belly(spot).liverFelt() ? 1 : 0;
    }

    private static String liverFeelOf(Spot spot) {
        if (!belly(spot).liverFelt()) {
            return "not-felt";
        }
        if (beat(spot) >= spot.constant("liver.beats-mm")) {
            return "pulsing";
        }
        if (spot.of("liver.lumps") >= spot.constant("belly.plain")) {
            return "hard-humps";
        }
        if (spot.of("liver.tender") >= spot.constant("belly.deep-pain")) {
            return "sore-smooth";
        }
        return spot.of("liver.firm") >= spot.constant("liver.firm-enough") ? "firm" : "soft";
    }

    private static TrunkSign liverSpan() {
        return TrunkSign.number(
                        "liver-span", "cm", spot -> spot.of("liver.span"), "liver.span-least", "liver.span-most")
                .shows("below the ribs, dull from", "cm", spot -> belly(spot).liverEdge() - spot.of("liver.span"))
                .shows("below the ribs, dull to", "cm", spot -> belly(spot).liverEdge())
                .needs("liver.span");
    }

    private static TrunkSign spleenNote() {
        return TrunkSign.word("spleen-note", Set.of("resonant"), BellyOrgans::spleenNoteOf)
                .shows("note, breath out", "ms", spot -> note(spot, 1.4))
                .shows("note, full breath in", "ms", spot -> note(spot, 0))
                .needs("spleen.length");
    }

    /** How long the tapped point rings: less as the spleen comes down into it. */
    private static double note(Spot spot, double up) {
        double into = spot.of("spleen.length") - up - spot.constant("spleen.resonant-cm");
        return Math.max(8, 60 - 26 * Math.max(0, into) + 4 * spot.own("spleen-note"));
    }

    private static String spleenNoteOf(Spot spot) {
        double dull = spot.constant("spleen.dull-ms");
        if (note(spot, 1.4) < dull) {
            return "dull";
        }
        return note(spot, 0) < dull ? "dull-breath-in" : "resonant";
    }

    private static TrunkSign spleenEdge() {
        return TrunkSign.number("spleen-edge", "cm", spot -> belly(spot).spleenEdge(), "zero", "zero")
                .shows(
                        "edge below the left ribs, breath in",
                        "cm",
                        spot -> belly(spot).spleenEdge())
                .shows(
                        "edge from the midline",
                        "cm",
                        spot -> 14 - 0.9 * belly(spot).spleenEdge())
                .says("belly-press", spot -> belly(spot).spleenEdge() > 0 ? spot.of("spleen.sore") : 0)
                .needs(everywhere("lining", "spleen.length", "belly.fluid"));
    }

    private static double poleFelt(Spot spot) {
        double thin =
                Math.max(0, spot.constant("kidney.thin-from") - belly(spot).wall());
        double lower = spot.side() == Side.RIGHT ? thin * spot.constant("kidney.right-lower") : 0;
        double hidden = spot.constant("kidney.hidden") + 0.05 * belly(spot).wall() - lower;
        return Math.max(0, spot.of("kidney.@side.length") - hidden);
    }

    private static TrunkSign kidney() {
        return TrunkSign.word("kidney-between-hands", Set.of("not-felt", "lower-end"), BellyOrgans::kidneyOf)
                .shows("flicked from behind, meets the front hand by", "mm", spot -> Math.min(14, 5 * poleFelt(spot)))
                .shows("lower end below the ribs", "cm", spot -> poleFelt(spot) > 0 ? 2 + poleFelt(spot) : 0)
                .shows("uneven by", "mm", spot -> poleFelt(spot) > 0 ? 16 * spot.of("kidney.@side.lumps") : 0)
                .says("belly-press", spot -> poleFelt(spot) > 0 ? spot.of("kidney.@side.sore") : 0)
                .explained(
                        spot -> List.of("kidney.@side." + (kidneyOf(spot).equals("large-humps") ? "lumps" : "length")));
    }

    private static String kidneyOf(Spot spot) {
        if (poleFelt(spot) < spot.constant("kidney.felt-cm")) {
            return "not-felt";
        }
        if (spot.of("kidney.@side.lumps") >= spot.constant("belly.plain")) {
            return "large-humps";
        }
        return spot.of("kidney.@side.length") >= spot.constant("kidney.large-from") ? "large-smooth" : "lower-end";
    }

    private static TrunkSign aortaWidth() {
        return TrunkSign.number("aorta", "cm", spot -> belly(spot).aortaFelt(), "zero", "aorta.width-most")
                .shows("beat, between the fingertips", "cm", spot -> belly(spot).aortaFelt())
                .shows("fingertips part by", "mm", BellyOrgans::apart)
                .shows("fingertips rise by", "mm", spot -> belly(spot).aortaFelt() > 0 ? 3 : 0)
                .needs("aorta.width", "belly.fluid", "belly.middle.upper.lining");
    }

    private static double apart(Spot spot) {
        double felt = belly(spot).aortaFelt();
        return felt >= spot.constant("aorta.apart-cm") ? 0.9 * felt : 0;
    }

    private static TrunkSign aortaPush() {
        return TrunkSign.word("aorta", Set.of("not-felt", "forwards"), spot -> {
                    double felt = belly(spot).aortaFelt();
                    return felt <= 0 ? "not-felt" : apart(spot) > 0 ? "outwards" : "forwards";
                })
                .shows("beat, between the fingertips", "cm", spot -> belly(spot).aortaFelt())
                .shows("fingertips part by", "mm", BellyOrgans::apart)
                .shows("fingertips rise by", "mm", spot -> belly(spot).aortaFelt() > 0 ? 3 : 0)
                .needs("aorta.width", "belly.fluid", "belly.middle.upper.lining");
    }
}

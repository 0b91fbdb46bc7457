package org.manubrium.patient.sign;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.trunk.Spot;

/** What a finger in the rectum meets. */
final class RectumSigns {
    private static final List<Side> BOTH = List.of(Side.RIGHT, Side.LEFT);

    private RectumSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of("rectum-finger", finger(), "rectum-glove", glove(), "rectum-grip", grip());
    }

    private static TrunkSign finger() {
        return TrunkSign.word("rectum-finger", Set.of("empty", "soft-stool"), RectumSigns::fingerOf)
                .shows("what fills it, across", "mm", RectumSigns::stool)
                .shows(
                        "what fills it gives way by",
                        "mm",
                        spot -> spot.of("rectum.hard-stool") > spot.of("rectum.stool") ? 2 : 9)
                .shows("fixed in the wall, across", "mm", spot -> spot.of("rectum.lump"))
                .says("rectum-finger", spot -> spot.of("rectum.sore"))
                .explained(spot -> List.of(
                        switch (fingerOf(spot)) {
                            case "lump" -> "rectum.lump";
                            case "sore" -> "rectum.sore";
                            case "hard-stool" -> "rectum.hard-stool";
                            default -> "rectum.stool";
                        }));
    }

    private static double stool(Spot spot) {
        return Math.max(spot.of("rectum.hard-stool"), spot.of("rectum.stool"));
    }

    private static String fingerOf(Spot spot) {
        if (spot.of("rectum.lump") >= spot.constant("rectum.lump-mm")) {
            return "lump";
        }
        if (spot.of("rectum.sore") >= spot.constant("belly.plain")) {
            return "sore";
        }
        if (spot.of("rectum.hard-stool") >= spot.constant("rectum.full-mm")) {
            return "hard-stool";
        }
        return spot.of("rectum.stool") >= spot.constant("rectum.full-mm") ? "soft-stool" : "empty";
    }

    private static TrunkSign glove() {
        return TrunkSign.word("rectum-glove", Set.of("brown"), RectumSigns::gloveOf)
                .shows("stain, long waves of light", "of 255", spot -> mixed(spot, 122, 30, 178))
                .shows("stain, middle waves of light", "of 255", spot -> mixed(spot, 84, 26, 24))
                .shows("stain, short waves of light", "of 255", spot -> mixed(spot, 46, 26, 30))
                .explained(spot -> List.of(gloveOf(spot).equals("red") ? "bowel.fresh-blood" : "bowel.old-blood"));
    }

    private static double mixed(Spot spot, double usual, double old, double fresh) {
        double black = spot.of("bowel.old-blood");
        double red = spot.of("bowel.fresh-blood");
        return Math.rint((usual * (1 - black) + old * black) * (1 - red) + fresh * red);
    }

    private static String gloveOf(Spot spot) {
        if (spot.of("bowel.fresh-blood") >= spot.constant("belly.plain")) {
            return "red";
        }
        return spot.of("bowel.old-blood") >= spot.constant("belly.plain") ? "black" : "brown";
    }

    private static TrunkSign grip() {
        return TrunkSign.word(
                        "rectum-grip",
                        Set.of("grips"),
                        spot -> held(spot) >= spot.constant("rectum.grips") ? "grips" : "lax")
                .shows("ring holds the finger with", "N", spot -> 6 * held(spot))
                .along(spot -> BOTH.stream()
                        .map(side -> new Strand("arc", spot.body().anatomy().arc("anal-wink", side)))
                        .toList());
    }

    private static double held(Spot spot) {
        return BOTH.stream()
                .mapToDouble(
                        side -> spot.body().conduction(spot.body().anatomy().arc("anal-wink", side)))
                .average()
                .orElse(0);
    }
}

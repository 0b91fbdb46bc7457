package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.BellySigns.belly;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.patient.trunk.Spot;

/** What a hand on the belly meets, region by region, and what hurts. */
final class BellyTouch {
    private static final String SORE = "belly.@side.@place.sore";
    private static final String LINING = "belly.@side.@place.lining";
    private static final String LUMP = "belly.@side.@place.lump";
    private static final String STOOL = "belly.@side.@place.stool";

    private BellyTouch() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "light", light(),
                "deep", deep(),
                "rap", rap(),
                "rebound", rebound(),
                "murphy", murphy(),
                "psoas", psoas(),
                "hernia", hernia());
    }

    /** Pain under a light hand: the lining feels it, an organ behind it little. */
    private static double lightPain(Spot spot) {
        return pain(spot, "belly.light-sore", "belly.light-lining");
    }

    private static double pain(Spot spot, String ofOrgan, String ofLining) {
        return Math.min(1, spot.constant(ofOrgan) * spot.of(SORE) + spot.constant(ofLining) * spot.of(LINING));
    }

    private static double stiffening(Spot spot) {
        return Math.max(0, lightPain(spot) - spot.constant("belly.guards-from")) / 0.6;
    }

    private static TrunkSign light() {
        return TrunkSign.grade("belly-press", "belly-touch", Set.of("soft"), BellyTouch::lightPain)
                .shows("fingers sink in", "mm", spot -> Math.max(2, 24 - 24 * stiffening(spot) + spot.own("give")))
                .shows(
                        "push needed for 10 mm",
                        "N",
                        spot -> 2.4 + 0.02 * belly(spot).wall() + 14 * stiffening(spot))
                .says("belly-press", BellyTouch::lightPain)
                .needs(SORE, LINING);
    }

    private static double deepPain(Spot spot) {
        return Math.max(spot.of(SORE), spot.of(LINING));
    }

    /** A lump is met if it is wide for the wall before it and the wall is not held stiff. */
    private static boolean met(Spot spot, double mm) {
        double least = spot.constant("belly.lump-mm") + 0.4 * belly(spot).wall();
        return mm >= least && lightPain(spot) < spot.constant("belly.hides-lumps");
    }

    private static TrunkSign deep() {
        return TrunkSign.word("belly-deep", Set.of("nothing"), BellyTouch::deepOf)
                .shows("under the fingers, across", "mm", BellyTouch::across)
                .shows("gives way by", "mm", spot -> across(spot) == 0 ? 0 : spot.of(STOOL) > spot.of(LUMP) ? 12 : 1)
                .shows("push needed for 30 mm", "N", spot -> 9 + 30 * stiffening(spot))
                .says("belly-press", BellyTouch::deepPain)
                .explained(spot -> switch (deepOf(spot)) {
                    case "lump" -> List.of(LUMP);
                    case "dents" -> List.of(STOOL);
                    default -> List.of(SORE, LINING);
                });
    }

    private static double across(Spot spot) {
        double widest = Math.max(spot.of(LUMP), spot.of(STOOL));
        return met(spot, widest) ? widest : 0;
    }

    private static String deepOf(Spot spot) {
        if (met(spot, spot.of(LUMP))) {
            return "lump";
        }
        if (met(spot, spot.of(STOOL))) {
            return "dents";
        }
        return deepPain(spot) >= spot.constant("belly.deep-pain") ? "tender" : "nothing";
    }

    private static TrunkSign rap() {
        return TrunkSign.grade("belly-tap", "belly-rap", Set.of("none"), BellyTouch::rapPain)
                .flinches(BellyTouch::rapPain)
                .says("belly-tap", BellyTouch::rapPain)
                .needs(SORE, LINING);
    }

    private static double rapPain(Spot spot) {
        return pain(spot, "belly.rap-sore", "belly.rap-lining");
    }

    private static TrunkSign rebound() {
        return TrunkSign.word(
                        "belly-release",
                        Set.of("none"),
                        spot -> spot.of(LINING) >= spot.constant("belly.rebound") ? "worse" : "none")
                .flinches(spot -> spot.of(LINING))
                .says("belly-release", spot -> spot.of(LINING))
                .needs(LINING);
    }

    private static TrunkSign murphy() {
        return TrunkSign.word(
                        "murphy",
                        Set.of("goes-on"),
                        spot -> spot.of("gallbladder.sore") >= spot.constant("gallbladder.catches")
                                ? "catches"
                                : "goes-on")
                .shows("breath in, before it ends", "ml", BellyTouch::breathUnderTheHand)
                .says("murphy", spot -> spot.of("gallbladder.sore"))
                .needs("gallbladder.sore");
    }

    private static double breathUnderTheHand(Spot spot) {
        double full = 1900 + 150 * spot.own("deep-breath");
        return spot.of("gallbladder.sore") >= spot.constant("gallbladder.catches") ? full * 0.35 : full;
    }

    private static TrunkSign psoas() {
        return TrunkSign.word(
                        "psoas-stretch",
                        Set.of("none"),
                        spot -> spot.of("psoas.@side.sore") >= spot.constant("belly.plain") ? "hurts" : "none")
                .says("psoas-stretch", spot -> spot.of("psoas.@side.sore"))
                .needs("psoas.@side.sore");
    }

    private static TrunkSign hernia() {
        return TrunkSign.word("hernia", Set.of("none"), BellyTouch::herniaOf)
                .shows("lump at rest", "mm", spot -> 0.5 * bulge(spot) * (1 + stuck(spot)))
                .shows("more on a cough", "mm", spot -> 0.5 * bulge(spot) * (1 - stuck(spot)))
                .shows("still stands out while it is pressed on", "mm", spot -> bulge(spot) * stuck(spot))
                .says("hernia", spot -> bulge(spot) > 0 ? stuck(spot) : 0)
                .explained(
                        spot -> List.of("hernia.@side.@place." + (herniaOf(spot).equals("stuck") ? "stuck" : "bulge")));
    }

    private static double bulge(Spot spot) {
        return spot.of("hernia.@side.@place.bulge");
    }

    private static double stuck(Spot spot) {
        return spot.of("hernia.@side.@place.stuck");
    }

    private static String herniaOf(Spot spot) {
        if (bulge(spot) < spot.constant("hernia.seen-mm")) {
            return "none";
        }
        return stuck(spot) >= spot.constant("belly.plain") ? "stuck" : "goes-back";
    }
}

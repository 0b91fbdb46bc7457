package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.trunk.Spot;

/** The thyroid, looked at while the patient swallows, and felt from behind. */
final class ThyroidSigns {
    private static final double STEP_MS = 50;
    private static final int STEPS = 60;
    private static final List<Side> LOBES = List.of(Side.RIGHT, Side.LEFT);
    private static final String[] WHOLE = {
        "thyroid.right.volume", "thyroid.left.volume", "thyroid.right.lump", "thyroid.left.lump"
    };

    private ThyroidSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "thyroid-look", look(),
                "goitre", goitre(),
                "thyroid-feel", feel(),
                "thyroid-bruit", bruit(),
                "arms-raised", armsRaised());
    }

    private static double both(Spot spot, String kind) {
        return LOBES.stream()
                .mapToDouble(side -> spot.body().quantity("thyroid." + side.word() + "." + kind))
                .sum();
    }

    private static double widestLump(Spot spot) {
        return LOBES.stream()
                .mapToDouble(side -> spot.body().quantity("thyroid." + side.word() + ".lump"))
                .max()
                .orElse(0);
    }

    /** How far the front of the neck stands out over the gland, mm. */
    private static double standsOut(Spot spot) {
        double gland = 0.35 * Math.max(0, both(spot, "volume") - spot.constant("thyroid.hidden-ml"));
        return gland + Math.max(0, widestLump(spot) - 14) * 0.6;
    }

    private static double cyst(Spot spot) {
        return spot.of("neck.cyst");
    }

    private static TrunkSign look() {
        return TrunkSign.word("neck-swallow", Set.of("none"), ThyroidSigns::lookOf)
                .shows("front of the neck stands out", "mm", spot -> standsOut(spot) + 0.5 * cyst(spot))
                .shows("moves when the tongue is put out", "mm", spot -> cyst(spot) > 0 ? 9 : 0)
                .moves(spot -> rise("larynx on a swallow", 20 + spot.own("larynx")))
                .moves(spot -> rise("fullness on a swallow", plainToSee(spot) ? 18 : 0))
                .explained(spot -> lookOf(spot).equals("rises-tongue") ? List.of("neck.cyst") : List.of(WHOLE));
    }

    private static boolean plainToSee(Spot spot) {
        return standsOut(spot) >= spot.constant("thyroid.seen-mm") || cyst(spot) >= spot.constant("neck.cyst-mm");
    }

    private static String lookOf(Spot spot) {
        if (cyst(spot) >= spot.constant("neck.cyst-mm")) {
            return "rises-tongue";
        }
        return plainToSee(spot) ? "rises" : "none";
    }

    private static Appearance.Curve rise(String name, double mm) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double t = (i * STEP_MS - 1100) / 420;
            samples.add(TrunkSign.tenths(mm * Math.exp(-t * t)));
        }
        return new Appearance.Curve(name, "mm", STEP_MS, samples);
    }

    /** A lump in a gland that is not enlarged counts as felt. */
    private static double size(Spot spot) {
        double lump = widestLump(spot) >= spot.constant("thyroid.lump-mm") ? spot.constant("thyroid.felt-ml") : 0;
        double seen = standsOut(spot) >= spot.constant("thyroid.seen-mm") ? spot.constant("thyroid.seen-ml") : 0;
        return Math.max(Math.max(lump, seen), both(spot, "volume"));
    }

    private static TrunkSign goitre() {
        return TrunkSign.grade("thyroid-size", "goitre", Set.of("0"), ThyroidSigns::size)
                .shows("right lobe, top to bottom", "mm", spot -> 10 * length(spot, "right"))
                .shows("right lobe, across", "mm", spot -> 10 * width(spot, "right"))
                .shows("left lobe, top to bottom", "mm", spot -> 10 * length(spot, "left"))
                .shows("left lobe, across", "mm", spot -> 10 * width(spot, "left"))
                .shows("stands out, head level", "mm", ThyroidSigns::standsOut)
                .needs(WHOLE);
    }

    /** A lobe too small to be told from muscle has no length to a finger. */
    private static double length(Spot spot, String side) {
        double lump = spot.body().quantity("thyroid." + side + ".lump");
        double volume = spot.body().quantity("thyroid." + side + ".volume");
        double gland = volume >= spot.constant("thyroid.lobe-ml") ? 2.1 * Math.cbrt(volume) : 0;
        return Math.max(gland, lump >= spot.constant("thyroid.lump-mm") ? lump / 10 : 0);
    }

    /** A lobe is about half as wide as long; a lump is as wide as it is long. */
    private static double width(Spot spot, String side) {
        double lump = spot.body().quantity("thyroid." + side + ".lump");
        return length(spot, side) == 0
                ? 0
                : Math.max(
                        Math.cbrt(spot.body().quantity("thyroid." + side + ".volume")),
                        lump >= spot.constant("thyroid.lump-mm") ? lump / 10 : 0);
    }

    private static TrunkSign feel() {
        return TrunkSign.word("thyroid-lobe", Set.of("not-felt"), ThyroidSigns::feelOf)
                .shows(
                        "lobe, top to bottom",
                        "cm",
                        spot -> length(spot, spot.side().word()))
                .shows("lobe, across", "cm", spot -> width(spot, spot.side().word()))
                .shows("one part stands out, across", "mm", spot -> felt(spot) * lobe(spot, "lump"))
                .shows("uneven under the finger by", "mm", spot -> felt(spot) * 9 * lobe(spot, "humps"))
                .shows("gives way by", "mm", spot -> felt(spot) * Math.max(0.3, 5 * (1 - lobe(spot, "hard"))))
                .shows("rises on a swallow", "mm", spot -> felt(spot) * 18 * (1 - lobe(spot, "held")))
                .says("thyroid-lobe", spot -> felt(spot) * lobe(spot, "sore"))
                .explained(spot -> switch (feelOf(spot)) {
                    case "hard" -> List.of("thyroid.@side.hard");
                    case "painful" -> List.of("thyroid.@side.sore");
                    case "lumpy" -> List.of("thyroid.@side.humps");
                    case "one-lump" -> List.of("thyroid.@side.lump");
                    default -> List.of("thyroid.@side.volume");
                });
    }

    private static double lobe(Spot spot, String kind) {
        return spot.of("thyroid.@side." + kind);
    }

    private static double felt(Spot spot) {
        return length(spot, spot.side().word()) > 0 ? 1 : 0;
    }

    private static String feelOf(Spot spot) {
        if (felt(spot) == 0) {
            return "not-felt";
        }
        if (lobe(spot, "hard") >= spot.constant("node.hard")) {
            return "hard";
        }
        if (lobe(spot, "sore") >= spot.constant("belly.plain")) {
            return "painful";
        }
        if (lobe(spot, "humps") >= spot.constant("belly.plain")) {
            return "lumpy";
        }
        if (lobe(spot, "lump") >= spot.constant("thyroid.lump-mm")) {
            return "one-lump";
        }
        return lobe(spot, "hard") >= spot.constant("node.rubbery") ? "firm" : "smooth";
    }

    private static TrunkSign bruit() {
        return TrunkSign.word(
                        "neck-bruit",
                        Set.of("quiet"),
                        spot -> spot.of("thyroid.rush") >= spot.constant("neck.rush-heard") ? "blowing" : "quiet")
                .shows("sound above the noise of the room", "dB", spot -> 40 * spot.of("thyroid.rush"))
                .shows("lasts in each beat", "ms", spot -> 600 * spot.of("thyroid.rush"))
                .needs("thyroid.rush");
    }

    /** What lies in the inlet of the chest is squeezed as the arms go up. */
    private static double squeezed(Spot spot) {
        return Math.max(spot.of("thyroid.behind"), 1 - spot.of("caval-patency"));
    }

    private static TrunkSign armsRaised() {
        return TrunkSign.word(
                        "arms-raised",
                        Set.of("unchanged"),
                        spot -> squeezed(spot) >= spot.constant("belly.plain") ? "congested" : "unchanged")
                .shows("after a minute, the face redder by", "%", spot -> 40 * squeezed(spot) + 1)
                .shows("after a minute, the neck wider by", "mm", spot -> 22 * squeezed(spot))
                .says("arms-raised", ThyroidSigns::squeezed)
                .needs("thyroid.behind", "caval-patency");
    }
}

package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.BellySigns.belly;
import static org.manubrium.patient.sign.BellySigns.everywhere;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.trunk.Belly;
import org.manubrium.patient.trunk.Spot;

/** What is seen and heard of the belly before a hand is laid on it. */
final class BellyLooks {
    private static final double STEP_MS = 100;
    private static final int STEPS = 90;
    private static final double BREATH_S = 4;
    private static final double WAVE_S = 2.6;

    private BellyLooks() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "shape", shape(),
                "veins", veins(),
                "scars", scars(),
                "movement", movement(),
                "sounds", sounds(),
                "bruit", bruit("artery.@place.rush"),
                "renal-bruit", bruit("kidney.@side.rush"));
    }

    private static TrunkSign shape() {
        return TrunkSign.word("belly-shape", Set.of("usual"), BellyLooks::shapeOf)
                .shows("stands above the ribs", "mm", spot -> belly(spot).height())
                .shows("flanks stand out", "mm", spot -> belly(spot).flanks())
                .shows("rises above the pubic bone", "cm", spot -> belly(spot).bladder())
                .shows(
                        "navel stands out",
                        "mm",
                        spot -> 2.5 * Math.max(0, belly(spot).fluid() - 2) - 4)
                .along(BellyFluid::emptying)
                .explained(spot -> switch (shapeOf(spot)) {
                    case "full-flanks" -> List.of("belly.fluid");
                    case "full" -> List.of("belly.gas");
                    default -> List.of("bladder.litres");
                });
    }

    private static String shapeOf(Spot spot) {
        Belly belly = belly(spot);
        if (belly.flanks() >= spot.constant("belly.flanks-full")) {
            return "full-flanks";
        }
        if (belly.height() >= spot.constant("belly.height-full")) {
            return "full";
        }
        return belly.bladder() >= spot.constant("bladder.seen-cm") ? "full-below" : "usual";
    }

    private static TrunkSign veins() {
        return TrunkSign.word("belly-veins", Set.of("none"), BellyLooks::veinsOf)
                .shows("width of the veins", "mm", spot -> 0.6 + portal(spot) + 3 * below(spot))
                .shows("emptied below the navel, fills from above", "mm/s", spot -> 2 + 9 * portal(spot))
                .shows("emptied below the navel, fills from below", "mm/s", spot -> 1 + 30 * below(spot))
                .explained(spot -> List.of(veinsOf(spot).equals("upwards") ? "lower-cava.block" : "portal-pressure"));
    }

    private static double portal(Spot spot) {
        return Math.max(0, spot.of("portal-pressure") - spot.constant("portal.open")) * 0.4;
    }

    private static double below(Spot spot) {
        return spot.of("lower-cava.block");
    }

    private static String veinsOf(Spot spot) {
        if (below(spot) >= spot.constant("belly.plain")) {
            return "upwards";
        }
        return portal(spot) > 0 ? "from-navel" : "none";
    }

    private static TrunkSign scars() {
        TrunkSign sign = TrunkSign.word("belly-scars", Set.of("none"), BellyLooks::scarsOf);
        for (String region : Belly.REGIONS) {
            sign = sign.shows("pale line, " + region.replace('.', ' '), "mm", spot -> spot.of(scar(region)));
        }
        return sign.needs(everywhere("scar"));
    }

    private static String scar(String region) {
        return "belly." + region + ".scar";
    }

    private static String scarsOf(Spot spot) {
        List<String> there = Belly.REGIONS.stream()
                .filter(region -> spot.of(scar(region)) >= spot.constant("belly.scar-mm"))
                .map(region -> region.startsWith("middle") ? "midline" : region.replace('.', '-'))
                .distinct()
                .toList();
        return there.size() > 1 ? "several" : there.isEmpty() ? "none" : there.get(0);
    }

    private static TrunkSign movement() {
        return TrunkSign.word("belly-movement", Set.of("moves"), BellyLooks::movementOf)
                .shows("rises on a breath in", "mm", BellyLooks::rise)
                .moves(spot -> curve("navel", t -> rise(spot) * (1 - Math.cos(2 * Math.PI * t / BREATH_S)) / 2))
                .moves(spot -> curve("left of the navel", t -> ripple(spot) * Math.max(0, Math.sin(turns(t)))))
                .moves(spot -> curve("right of the navel", t -> ripple(spot) * Math.max(0, Math.sin(turns(t) - 2))))
                .explained(spot ->
                        movementOf(spot).equals("waves") ? List.of("bowel.tight") : List.of(everywhere("lining")));
    }

    private static double turns(double seconds) {
        return 2 * Math.PI * seconds / WAVE_S;
    }

    private static double rise(Spot spot) {
        return spot.constant("belly.rise") * (1 - 0.95 * belly(spot).sorestLining()) + spot.own("belly-rise");
    }

    /** Coils that work hard, full and tight against a block, lift the wall. */
    private static double ripple(Spot spot) {
        double gas = Math.max(0, belly(spot).gas() - 0.8);
        double tight = Math.min(1, 2 * spot.of("bowel.tight"));
        return 6 * Math.max(0, spot.of("bowel.motion") - 1.5) * Math.min(1, gas) * tight;
    }

    private static String movementOf(Spot spot) {
        if (ripple(spot) >= spot.constant("belly.ripple-mm")) {
            return "waves";
        }
        double rise = rise(spot);
        return rise < spot.constant("belly.rise-still")
                ? "still"
                : rise < spot.constant("belly.rise-less") ? "less" : "moves";
    }

    private interface At {
        double of(double seconds);
    }

    private static Appearance.Curve curve(String name, At at) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            samples.add(TrunkSign.tenths(at.of(i * STEP_MS / 1000)));
        }
        return new Appearance.Curve(name, "mm", STEP_MS, samples);
    }

    private static TrunkSign sounds() {
        return TrunkSign.word("bowel-sounds", Set.of("gurgles"), BellyLooks::soundsOf)
                .shows("sounds a minute", "", BellyLooks::soundRate)
                .shows("pitch", "Hz", spot -> 260 + 700 * spot.of("bowel.tight") + 40 * spot.own("bowel-pitch"))
                .shows("longest silence", "s", spot -> 90 / (0.5 + soundRate(spot)))
                .explained(spot -> List.of(soundsOf(spot).equals("tinkling") ? "bowel.tight" : "bowel.motion"));
    }

    private static double soundRate(Spot spot) {
        return spot.constant("bowel.rate") * spot.of("bowel.motion");
    }

    private static String soundsOf(Spot spot) {
        double motion = spot.of("bowel.motion");
        if (motion < spot.constant("bowel.silent")) {
            return "absent";
        }
        if (motion < spot.constant("bowel.busy")) {
            return "gurgles";
        }
        return spot.of("bowel.tight") >= spot.constant("belly.plain") ? "tinkling" : "busy";
    }

    private static TrunkSign bruit(String quantity) {
        return TrunkSign.word(
                        "belly-bruit",
                        Set.of("none"),
                        spot -> spot.of(quantity) >= spot.constant("belly.rush-heard") ? "bruit" : "none")
                .shows("sound above the noise of the room", "dB", spot -> 45 * spot.of(quantity))
                .shows("lasts in each beat", "ms", spot -> 420 * spot.of(quantity))
                .needs(quantity);
    }
}

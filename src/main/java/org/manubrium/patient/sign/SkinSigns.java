package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.atMost;
import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.List;
import java.util.Map;
import org.manubrium.appearance.Appearance;

/** What stands on the skin: spiders, bruises and rashes. */
final class SkinSigns {
    private SkinSigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "spiders", counted("skin.spiders", "spiders", "fills from the middle in", "s", 1),
                "bruises", counted("skin.bruises", "bruises", "widest", "cm", 2.5),
                "rash", rash());
    }

    private static QuantitySign counted(String quantity, String drawing, String other, String unit, double amount) {
        return measured(
                1,
                spot -> spot.of(quantity),
                spot -> new Appearance(
                        drawing,
                        List.of(),
                        List.of(measure("seen", Math.rint(spot.of(quantity)), ""), measure(other, amount, unit)),
                        ""),
                atMost(quantity + "-most"));
    }

    private static QuantitySign rash() {
        return chosen(
                spot -> {
                    double from = spot.constant("skin.rash-from");
                    if (spot.of("skin.purpura") >= from) {
                        return "spots-stay";
                    }
                    if (spot.of("skin.hives") >= from) {
                        return "weals";
                    }
                    return spot.of("skin.plaques") >= from ? "scaly-patches" : "none";
                },
                spot -> new Appearance(
                        "rash",
                        List.of(),
                        List.of(
                                measure("scaly raised patches", 40 * spot.of("skin.plaques"), "% of elbow and knee"),
                                measure(
                                        "spots that stay under glass",
                                        Math.rint(60 * spot.of("skin.purpura")),
                                        "on a shin"),
                                measure(
                                        "weals that fade under glass",
                                        Math.rint(20 * spot.of("skin.hives")),
                                        "on the trunk"),
                                measure("darker or redder than around", contrast(spot), "%")),
                        ""));
    }

    /** Redness shows less on skin that holds much melanin. */
    private static double contrast(Spot spot) {
        double most = Math.max(spot.of("skin.plaques"), Math.max(spot.of("skin.purpura"), spot.of("skin.hives")));
        return 30 * most * (1 - 0.6 * spot.body().person().tone().melanin());
    }
}

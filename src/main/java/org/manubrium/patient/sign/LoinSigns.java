package org.manubrium.patient.sign;

import java.util.Map;
import java.util.Set;
import org.manubrium.patient.trunk.Spot;

/** What lies beside and below the spine: muscle, kidney, sacrum. */
final class LoinSigns {
    private LoinSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of(
                "muscle", muscle(),
                "renal-angle", soreness("loin-tap", "kidney.@side.sore"),
                "sacroiliac", soreness("sacroiliac-press", "sacroiliac.@side.sore"),
                "sacral-pit", sacralPit());
    }

    private static TrunkSign muscle() {
        return TrunkSign.word(
                        "back-muscle",
                        Set.of("soft"),
                        spot -> spot.of("back.@side.spasm") >= spot.constant("belly.plain") ? "held-tight" : "soft")
                .shows("thumb sinks in", "mm", spot -> 12 - 10 * spot.of("back.@side.spasm") + spot.own("back-give"))
                .says("back-muscle", spot -> spot.of("back.@side.spasm"))
                .needs("back.@side.spasm");
    }

    private static TrunkSign soreness(String drawing, String quantity) {
        return TrunkSign.grade(drawing, drawing, Set.of("none"), spot -> spot.of(quantity))
                .flinches(spot -> spot.of(quantity))
                .says(drawing, spot -> spot.of(quantity))
                .needs(quantity);
    }

    private static TrunkSign sacralPit() {
        return TrunkSign.number("sacral-pit", "mm", LoinSigns::pit, "zero", "sacrum.pit-most")
                .shows("dent left by the thumb", "mm", LoinSigns::pit)
                .needs("oedema.sacrum");
    }

    private static double pit(Spot spot) {
        return Math.rint(spot.of("oedema.sacrum"));
    }
}

package org.manubrium.patient.sign;

import java.util.Map;
import java.util.Set;
import org.manubrium.patient.trunk.Spot;

/** The carotid of one side: whether it beats, and whether blood rushes through it. */
final class CarotidSigns {
    private static final String NARROW = "carotid.@side.narrow";

    private CarotidSigns() {}

    static Map<String, TrunkSign> all() {
        return Map.of("carotid-beat", beat(), "carotid-bruit", bruit());
    }

    /** What still flows: a narrow artery passes enough for a long time. */
    private static double flow(Spot spot) {
        double from = spot.constant("carotid.weakens-from");
        return 1 - Math.max(0, spot.of(NARROW) - from) / (1 - from);
    }

    private static TrunkSign beat() {
        return TrunkSign.grade("carotid-beat", "carotid-beat", Set.of("full"), CarotidSigns::flow)
                .shows("lifts the finger by", "mm", spot -> flow(spot) * (1.6 + 0.2 * spot.own("carotid")))
                .needs(NARROW);
    }

    /** Quiet while wide, loudest where narrow and fast, quiet again when hardly anything passes. */
    private static double rush(Spot spot) {
        double narrow = spot.of(NARROW);
        double from = spot.constant("carotid.rushes-from");
        return Math.max(0, Math.min(1, (narrow - from) / 0.3)) * Math.min(1, flow(spot) * 2);
    }

    private static TrunkSign bruit() {
        return TrunkSign.word(
                        "neck-bruit",
                        Set.of("quiet"),
                        spot -> rush(spot) >= spot.constant("neck.rush-heard") ? "blowing" : "quiet")
                .shows("sound above the noise of the room", "dB", spot -> 40 * rush(spot))
                .shows("lasts in each beat", "ms", spot -> 520 * rush(spot))
                .needs(NARROW);
    }
}

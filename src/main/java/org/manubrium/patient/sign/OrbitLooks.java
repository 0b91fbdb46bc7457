package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.Feature.read;

import java.util.List;
import java.util.Map;

/** What is plain of the lids when the eye moves. */
final class OrbitLooks {
    private OrbitLooks() {}

    static Map<String, Look> all() {
        return Map.of(
                "lid-lag",
                new Look(
                        "lid-following",
                        "follows",
                        List.of(read(
                                "white above the cornea on looking down",
                                "mm",
                                1,
                                new Feature.Tabled("orbit", "lid-raised"),
                                "lags",
                                "lid.lag-seen"))));
    }
}

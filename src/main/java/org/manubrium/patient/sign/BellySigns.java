package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.patient.trunk.Belly;
import org.manubrium.patient.trunk.Spot;

/** The signs of the belly. */
final class BellySigns {
    private BellySigns() {}

    static Map<String, TrunkSign> all() {
        Map<String, TrunkSign> found = new HashMap<>(BellyLooks.all());
        found.putAll(BellyTouch.all());
        found.putAll(BellyFluid.all());
        found.putAll(BellyOrgans.all());
        found.putAll(RectumSigns.all());
        return found;
    }

    static Belly belly(Spot spot) {
        return new Belly(spot.body());
    }

    /** The same kind of quantity in every one of the nine regions. */
    static String[] everywhere(String kind, String... others) {
        List<String> ids = new java.util.ArrayList<>(List.of(others));
        Belly.REGIONS.forEach(region -> ids.add("belly." + region + "." + kind));
        return ids.toArray(new String[0]);
    }
}

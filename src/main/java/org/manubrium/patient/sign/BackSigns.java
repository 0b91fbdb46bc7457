package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.Map;

/** The signs of the spine and the back. */
final class BackSigns {
    private BackSigns() {}

    static Map<String, TrunkSign> all() {
        Map<String, TrunkSign> found = new HashMap<>(SpineSigns.all());
        found.putAll(LoinSigns.all());
        found.putAll(LegRaiseSigns.all());
        return found;
    }
}

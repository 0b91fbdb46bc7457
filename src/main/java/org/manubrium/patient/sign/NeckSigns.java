package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.Map;

/** The signs of the neck, and the lymph nodes wherever they lie. */
final class NeckSigns {
    private NeckSigns() {}

    static Map<String, TrunkSign> all() {
        Map<String, TrunkSign> found = new HashMap<>(NodeSigns.all());
        found.putAll(ThyroidSigns.all());
        found.putAll(CarotidSigns.all());
        return found;
    }
}

package org.manubrium.patient.lung;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;

/** What a zone of lung has an amount of, each from 0 (health) to 1. */
public enum LungQuantity {
    SOLID,
    BLOCKED,
    NARROW,
    SECRETION,
    WET,
    STIFF,
    TRAPPED,
    FLUID,
    GAS,
    RUB,
    GONE,
    SHRUNK;

    private static final Map<LungQuantity, Map<Side, Map<Zone, String>>> IDS = new EnumMap<>(LungQuantity.class);

    static {
        for (LungQuantity quantity : values()) {
            Map<Side, Map<Zone, String>> sides = new EnumMap<>(Side.class);
            for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
                Map<Zone, String> zones = new EnumMap<>(Zone.class);
                for (Zone zone : Zone.values()) {
                    zones.put(zone, "lung." + side.word() + "." + zone.id() + "." + quantity.kind());
                }
                sides.put(side, zones);
            }
            IDS.put(quantity, sides);
        }
    }

    private String kind() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The id of this quantity in one zone. */
    public String id(Side side, Zone zone) {
        return IDS.getOrDefault(this, Map.of()).getOrDefault(side, Map.of()).getOrDefault(zone, "");
    }

    /** The ids of several quantities in one zone. */
    public static Set<String> ids(Side side, Zone zone, LungQuantity... quantities) {
        Set<String> ids = new LinkedHashSet<>();
        Arrays.stream(quantities).forEach(quantity -> ids.add(quantity.id(side, zone)));
        return ids;
    }

    /** The ids of several quantities in every zone of one side, or of both for {@link Side#NONE}. */
    public static Set<String> everywhere(Side side, LungQuantity... quantities) {
        Set<String> ids = new LinkedHashSet<>();
        for (Zone zone : Zone.values()) {
            for (Side one : side == Side.NONE ? new Side[] {Side.RIGHT, Side.LEFT} : new Side[] {side}) {
                ids.addAll(ids(one, zone, quantities));
            }
        }
        return ids;
    }
}

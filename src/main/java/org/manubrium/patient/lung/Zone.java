package org.manubrium.patient.lung;

/** A part of the chest wall of one side, with the lung behind it. */
public enum Zone {
    APEX("apex", true),
    UPPER_FRONT("upper-front", true),
    LOWER_FRONT("lower-front", false),
    AXILLA("axilla", false),
    UPPER_BACK("upper-back", true),
    LOWER_BACK("lower-back", false);

    private final String id;
    private final boolean upper;

    Zone(String id, boolean upper) {
        this.id = id;
        this.upper = upper;
    }

    public String id() {
        return id;
    }

    /** Whether it lies under the upper of the two grips in which expansion is felt. */
    public boolean upper() {
        return upper;
    }

    /** The zone with this id, as a place of a manoeuvre names it. */
    public static Zone of(String id) {
        for (Zone zone : values()) {
            if (zone.id.equals(id)) {
                return zone;
            }
        }
        throw new IllegalArgumentException("no zone of the chest is called \"" + id + "\"");
    }
}

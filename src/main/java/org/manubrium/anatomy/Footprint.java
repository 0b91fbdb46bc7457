package org.manubrium.anatomy;

/**
 * Where something lies, coarsely: two that share a place always meet, two that do not nearly never do. A structure with its
 * side falls on one of 128 bits, a segment, or the want of one, on one of 64.
 */
public record Footprint(long low, long high, long segments) {
    public static final Footprint NOWHERE = new Footprint(0, 0, 0);
    private static final String NO_SEGMENT = "";
    private static final long ANY_SEGMENT = -1;

    /** Where a site lies. */
    static Footprint of(Site site) {
        return at(site, bit(site.segment().map(Segment::name).orElse(NO_SEGMENT).hashCode()));
    }

    /** Where all that a lesion covers lies: without a segment it takes every one. */
    public static Footprint ofLesion(Site site) {
        return site.segment().isPresent() ? of(site) : at(site, ANY_SEGMENT);
    }

    private static Footprint at(Site site, long segments) {
        int hash = site.structure().hashCode() * 31 + site.side().word().hashCode();
        boolean upper = (mixed(hash) & 1) == 1;
        return new Footprint(upper ? 0 : bit(hash), upper ? bit(hash) : 0, segments);
    }

    private static int mixed(int hash) {
        int spread = hash * 0x9E3779B9;
        return spread ^ spread >>> 16;
    }

    private static long bit(int hash) {
        return 1L << (mixed(hash) >>> 26);
    }

    public Footprint and(Footprint other) {
        return new Footprint(low | other.low, high | other.high, segments | other.segments);
    }

    public boolean meets(Footprint other) {
        return ((low & other.low) != 0 || (high & other.high) != 0) && (segments & other.segments) != 0;
    }
}

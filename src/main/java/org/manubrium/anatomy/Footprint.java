package org.manubrium.anatomy;

/**
 * Where something lies, coarsely: two that share a place always meet, two that do not nearly never do. Structures with
 * their side fall on 128 bits, segments on a bit each, and whatever has no segment on one of its own.
 */
public record Footprint(long low, long high, long segments) {
    public static final Footprint NOWHERE = new Footprint(0, 0, 0);
    private static final long NO_SEGMENT = 1L << 63;
    private static final long ANY_SEGMENT = -1;

    /** Where a site lies. */
    static Footprint of(Site site) {
        return at(site, site.segment().map(s -> 1L << s.ordinal()).orElse(NO_SEGMENT));
    }

    /** Where all that a lesion covers lies: without a segment it takes every one. */
    public static Footprint ofLesion(Site site) {
        return at(site, site.segment().map(s -> 1L << s.ordinal()).orElse(ANY_SEGMENT));
    }

    private static Footprint at(Site site, long segments) {
        int mixed = (site.structure().hashCode() * 31 + site.side().ordinal()) * 0x9E3779B9;
        long bit = 1L << (mixed >>> 26);
        boolean upper = (mixed >>> 25 & 1) == 1;
        return new Footprint(upper ? 0 : bit, upper ? bit : 0, segments);
    }

    public Footprint and(Footprint other) {
        return new Footprint(low | other.low, high | other.high, segments | other.segments);
    }

    public boolean meets(Footprint other) {
        return ((low & other.low) != 0 || (high & other.high) != 0) && (segments & other.segments) != 0;
    }
}

package org.manubrium.anatomy;

import java.util.List;
import java.util.Optional;

/**
 * One place on a pathway: a structure with its side and, where it has them, a spinal segment or a named level.
 * Written as a clinician says it: "root C7 left", "ulnar nerve left at elbow", "optic nerve right".
 */
public record Site(String structure, Optional<Segment> segment, Side side, Optional<String> level) {

    public static Site of(String structure, Side side) {
        return new Site(structure, Optional.empty(), side, Optional.empty());
    }

    public static Site at(String structure, Segment segment, Side side) {
        return new Site(structure, Optional.of(segment), side, Optional.empty());
    }

    public static Site at(String structure, Side side, String level) {
        return new Site(structure, Optional.empty(), side, Optional.of(level));
    }

    public Site mirrored() {
        return new Site(structure, segment, side.opposite(), level);
    }

    /** Whether a lesion said to lie here takes {@code other}: a site that names no level means all of its levels. */
    public boolean covers(Site other) {
        return structure.equals(other.structure)
                && side == other.side
                && (segment.isEmpty() || segment.equals(other.segment))
                && (level.isEmpty() || level.equals(other.level));
    }

    /** Whether a lesion said to lie here takes any of these. */
    public boolean coversAny(List<Site> others) {
        for (Site other : others) {
            if (covers(other)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String toString() {
        return structure
                + segment.map(s -> " " + s).orElse("")
                + (side == Side.NONE ? "" : " " + side.word())
                + level.map(l -> " at " + l).orElse("");
    }
}

package org.manubrium.anatomy;

import java.util.List;

/** What still passes, 0..1. */
@FunctionalInterface
public interface Kept {
    /** Whether anything may be lost here; where nothing is, all passes. */
    default boolean touches(Footprint footprint) {
        return true;
    }

    /** At one site. */
    double at(Site site);

    /**
     * Along a stretch of one tract. What takes several of its segments at once is one loss and counts once, as much as it
     * takes at its worst; here, where nothing says what belongs together, every site counts by itself.
     */
    default double along(List<Site> stretch) {
        double passed = 1;
        for (Site site : stretch) {
            passed *= at(site);
        }
        return passed;
    }
}

package org.manubrium.marking.credit;

import java.util.Comparator;
import java.util.List;
import org.manubrium.anatomy.SegmentSet;

/**
 * Roots: the shared roots over all roots named by either (Jaccard), best over the convention's alternatives. A set that is
 * taught elsewhere earns the same overlap, so that ticking every root does not pay.
 */
public final class RootsRule {
    private RootsRule() {}

    public static Credit credit(SegmentSet given, List<SegmentSet> accepted, boolean publishedElsewhere) {
        SegmentSet nearest = accepted.stream()
                .max(Comparator.comparingDouble(given::overlap))
                .orElseThrow(() -> new IllegalArgumentException("no set of roots is accepted"));
        double overlap = given.overlap(nearest);
        if (overlap == 1) {
            return Credit.full("This is the set taught under this convention.");
        }
        String shared = overlap == 0
                ? "It shares no root with " + nearest + "."
                : "It overlaps " + nearest + " in part: shared roots over all roots named by either.";
        return new Credit(overlap, publishedElsewhere ? "This set is taught elsewhere. " + shared : shared);
    }
}

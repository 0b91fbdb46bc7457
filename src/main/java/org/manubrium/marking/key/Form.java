package org.manubrium.marking.key;

import java.util.List;
import org.manubrium.anatomy.SegmentSet;

/**
 * What one teaching convention says of an item.
 *
 * @param scale the scale in force; blank unless the item is graded
 * @param normal whether the true finding counts as normal
 * @param least the lowest normal number and {@code most} the highest, in the reading's unit; infinite where none is taught
 * @param roots the sets that earn full credit, each an alternative; empty if no roots are asked
 */
public record Form(
        String convention,
        String scale,
        boolean normal,
        double least,
        double most,
        List<SegmentSet> roots,
        Origin normalOrigin,
        Origin rootsOrigin) {
    public Form {
        roots = List.copyOf(roots);
    }

    /** The same with other accepted sets of roots. */
    public Form withRoots(List<SegmentSet> others) {
        return new Form(convention, scale, normal, least, most, others, normalOrigin, rootsOrigin);
    }

    /** The same with another word on whether the true finding counts as normal. */
    public Form withNormal(boolean other) {
        return new Form(convention, scale, other, least, most, roots, normalOrigin, rootsOrigin);
    }

    /** Whether a number would count as normal. */
    public boolean within(double number) {
        return number >= least && number <= most;
    }
}

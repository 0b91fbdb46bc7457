package org.manubrium.anatomy;

import java.util.List;

/**
 * A part of the body in which several structures lie together, such as one half of the cord: a lesion there is a lesion of
 * each of them. Knows no sign.
 */
public record Region(String name, String extent, boolean segments, boolean sided, List<Part> parts) {

    /** A structure that lies in the region, on which side of it, and the share of the loss that reaches it. */
    public record Part(String structure, Relation side, String level, double share, String source, String confidence) {}
}

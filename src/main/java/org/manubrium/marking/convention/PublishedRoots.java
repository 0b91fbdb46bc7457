package org.manubrium.marking.convention;

import org.manubrium.anatomy.SegmentSet;

/** A root set that is in print. The first of a fact is what a convention teaches that says nothing of its own. */
public record PublishedRoots(String fact, SegmentSet roots, String source, String confidence, String note) {}

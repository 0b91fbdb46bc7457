package org.manubrium.anatomy;

import java.util.Map;

/**
 * A kind of feeling: the shares of the tracts that carry it, and how far neighbouring roots overlap.
 *
 * @param tracts share of each tract by name; the shares sum to 1
 * @param enough the share of all paths that is enough to feel it fully, 0..1
 * @param neighbourShare the share that each of the two neighbouring roots has at a key point, 0..0.5
 */
public record Modality(
        String id,
        Map<String, Double> tracts,
        double neighbourShare,
        double enough,
        String source,
        String confidence) {}

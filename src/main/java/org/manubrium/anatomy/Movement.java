package org.manubrium.anatomy;

import java.util.Map;

/**
 * A movement that is tested for power.
 *
 * @param muscles the share of each muscle, by id; the shares sum to 1
 * @param area the part of the body on the map of the brain: face, arm, trunk or leg
 * @param corticospinalShare the share of its drive that runs in the corticospinal tract; the rest runs in the other
 *     descending tracts, which is why a capsular lesion spares some movements more than others
 */
public record Movement(
        String id,
        String name,
        Map<String, Double> muscles,
        String area,
        double corticospinalShare,
        String source,
        String confidence) {}

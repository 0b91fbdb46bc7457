package org.manubrium.anatomy;

/**
 * A point by which it is felt where a limb is.
 *
 * @param area the limb, as movements name it: arm or leg
 * @param share of this point in the whole; the shares of one limb sum to 1
 */
public record LimbPoint(String area, String point, double share, String source, String confidence) {}

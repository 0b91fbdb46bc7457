package org.manubrium.reasoning;

/**
 * How closely the bodies of one diagnosis show what was published of a sign.
 *
 * @param ratio the id of the published figure
 * @param possible the diagnosis, by id
 * @param wanted the published share of such people who show the sign, 0..1
 * @param got the share of the weighted bodies who show it
 */
public record Fit(String ratio, String possible, double wanted, double got) {}

package org.manubrium.examination;

/**
 * One level of a scale.
 *
 * @param code what is recorded, such as "2" or "absent"
 * @param atLeast the smallest amount of the scale's quantity that earns this level, for a scale in grades; NaN for a set
 *     of words without an order
 */
public record Level(String scale, String code, String label, double atLeast, String source, String confidence) {}

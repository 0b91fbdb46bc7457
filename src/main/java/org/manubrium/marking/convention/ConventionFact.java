package org.manubrium.marking.convention;

import java.util.OptionalDouble;

/**
 * How one convention teaches one fact.
 *
 * @param fact what it is about, as "triceps-reflex roots", "reflex scale" or "neck-vein-height highest normal"
 * @param form the answer in words; for roots the accepted sets, alternatives separated by |
 * @param scale the scale in force, for a fact about scales
 * @param threshold the limit, in {@code unit}, for a fact about limits
 */
public record ConventionFact(
        String convention,
        String fact,
        String form,
        String scale,
        OptionalDouble threshold,
        String unit,
        String source,
        String confidence,
        String note) {}

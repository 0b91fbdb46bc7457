package org.manubrium.reasoning.odds;

import java.util.OptionalDouble;

/**
 * What was published of a finding.
 *
 * @param finding in the words of the publication
 * @param of what it speaks for
 * @param positive the likelihood ratio of the finding
 * @param negative the likelihood ratio of its absence
 * @param sensitivity the share with the disease who show it, 0..1
 * @param computed whether the ratios were reckoned from sensitivity and specificity
 */
public record LikelihoodRatio(
        String id,
        String finding,
        String of,
        OptionalDouble positive,
        OptionalDouble negative,
        OptionalDouble sensitivity,
        OptionalDouble specificity,
        boolean computed,
        String source,
        String confidence,
        String note) {

    /** The share with the disease who show the finding, as published, or as it follows from both ratios. */
    public OptionalDouble share() {
        if (sensitivity.isPresent()) {
            return sensitivity;
        }
        return positive.isPresent() && negative.isPresent()
                ? OptionalDouble.of(Odds.sensitivity(positive.getAsDouble(), negative.getAsDouble()))
                : OptionalDouble.empty();
    }
}

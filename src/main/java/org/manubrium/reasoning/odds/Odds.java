package org.manubrium.reasoning.odds;

/** Chances, odds and likelihood ratios. Chances are 0..1. */
public final class Odds {
    private Odds() {}

    /**
     * The chance after a finding.
     *
     * @param before the chance before it, 0..1
     * @param ratio the likelihood ratio of the finding, 0 or more
     * @throws IllegalArgumentException if either is out of range
     */
    public static double after(double before, double ratio) {
        if (!(before >= 0 && before <= 1) || !(ratio >= 0)) {
            throw new IllegalArgumentException(
                    "expected a chance from 0 to 1 and a ratio of 0 or more, found " + before + " and " + ratio);
        }
        if (before == 1) {
            return 1;
        }
        double odds = before / (1 - before) * ratio;
        return Double.isInfinite(odds) ? 1 : odds / (1 + odds);
    }

    /** The ratio of a present sign: how much more often people with the disease show it than people without. */
    public static double positive(double sensitivity, double specificity) {
        return sensitivity / (1 - specificity);
    }

    /** The ratio of an absent sign. */
    public static double negative(double sensitivity, double specificity) {
        return (1 - sensitivity) / specificity;
    }

    /** The sensitivity that belongs to a pair of ratios. */
    public static double sensitivity(double positive, double negative) {
        return positive * (1 - negative) / (positive - negative);
    }
}

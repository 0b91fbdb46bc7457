package org.manubrium.marking.credit;

/**
 * How sure somebody was, scored beside the mark: 1 - (p - y)², y being 1 for what was so and 0 for what was not. The rule is
 * proper: whoever believes p scores best, on average, by saying p (Brier, Monthly Weather Review 1950;78:1; Gneiting and
 * Raftery, JASA 2007;102:359, both from memory). A rule that pays p when right and takes p when wrong is not: there it pays
 * to say 100 always.
 */
public final class QuadraticRule {
    private QuadraticRule() {}

    /** @param p 0..1 */
    public static double score(double p, boolean right) {
        double off = p - (right ? 1 : 0);
        return 1 - off * off;
    }
}

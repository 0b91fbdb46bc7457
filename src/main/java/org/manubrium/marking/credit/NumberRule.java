package org.manubrium.marking.credit;

/** A number: full within the tolerance, then falling in a straight line to nothing at three tolerances. */
public final class NumberRule {
    private static final double NOTHING_AT = 3;

    private NumberRule() {}

    /** @param tolerance in the unit of both numbers; 0 asks for the exact number */
    public static Credit credit(double given, double truth, double tolerance) {
        double off = Math.abs(given - truth);
        if (off <= tolerance) {
            return Credit.full("Within the tolerance.");
        }
        double left = tolerance == 0 ? 0 : (NOTHING_AT - off / tolerance) / (NOTHING_AT - 1);
        return left > 0
                ? new Credit(left, "Outside the tolerance, but less than three tolerances off.")
                : Credit.none("Three tolerances off or more.");
    }
}

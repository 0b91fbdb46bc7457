package org.manubrium.reasoning;

/** Uncertainty, in bits. */
public final class Bits {
    private static final double LN2 = Math.log(2);

    private Bits() {}

    /** The uncertainty of chances that add up to 1, in bits; 0 is certain. */
    public static double of(double[] chances) {
        double sum = 0;
        for (double chance : chances) {
            sum += term(chance);
        }
        return sum;
    }

    /** What one chance adds: -p log2 p. */
    static double term(double chance) {
        return chance <= 0 ? 0 : -chance * Math.log(chance) / LN2;
    }
}

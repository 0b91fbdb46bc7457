package org.manubrium.patient;

import org.manubrium.anatomy.Side;

/**
 * How one healthy person differs from the next: a number from -1 to 1 for each trait, drawn from the patient's seed, the
 * same at every look. Mirroring swaps what the two sides drew.
 */
public record Variation(long seed, boolean swapped) {
    public static final Variation AVERAGE = new Variation(0, false);

    public static Variation of(long seed) {
        return new Variation(seed, false);
    }

    public Variation mirrored() {
        return new Variation(seed, !swapped);
    }

    /** A trait of the whole person, -1..1; 0 for the average person (seed 0). */
    public double of(String trait) {
        return draw(trait, 0);
    }

    /** A trait of one side, -1..1. */
    public double of(String trait, Side side) {
        Side drawn = swapped ? side.opposite() : side;
        return draw(trait, drawn == Side.RIGHT ? 1 : drawn == Side.LEFT ? 2 : 0);
    }

    private double draw(String trait, int part) {
        if (seed == 0) {
            return 0;
        }
        long mixed = seed * 0x9E3779B97F4A7C15L + trait.hashCode() * 0xD1B54A32D192ED03L + part * 0x94D049BB133111EBL;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        mixed ^= mixed >>> 31;
        return (mixed >>> 11) / (double) (1L << 52) - 1;
    }
}

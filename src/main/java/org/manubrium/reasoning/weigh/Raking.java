package org.manubrium.reasoning.weigh;

import java.util.List;

/**
 * Finds weights of the bodies of one diagnosis by which they show each sign as often as was published, and which differ
 * from what they were as little as can be: each weight is tilted by a power of how surely its body shows the sign, one sign
 * after the other, until nothing moves. What lies beyond every body comes as near as it can.
 */
final class Raking {
    private static final int SWEEPS = 60;
    private static final int HALVINGS = 60;

    /** No tilt is steeper, so that no body loses all weight. */
    private static final double STEEPEST = 8;

    private Raking() {}

    /**
     * One sign.
     *
     * @param shows for each body the chance that the sign is seen
     * @param wanted the share that should show it
     */
    @SuppressWarnings("ArrayRecordComponent") // made for one call, never compared
    record Wanted(double[] shows, double wanted) {}

    /** The weights, adding up to 1. */
    static double[] weights(double[] before, List<Wanted> signs) {
        double[] weights = before.clone();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (Wanted sign : signs) {
                weights = tilted(weights, sign.shows, tilt(weights, sign));
            }
        }
        return weights;
    }

    static double share(double[] weights, double[] shows) {
        double sum = 0;
        for (int b = 0; b < weights.length; b++) {
            sum += weights[b] * shows[b];
        }
        return sum;
    }

    private static double tilt(double[] weights, Wanted sign) {
        double low = -STEEPEST;
        double high = STEEPEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (share(tilted(weights, sign.shows, middle), sign.shows) < sign.wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double[] tilted(double[] weights, double[] shows, double tilt) {
        double[] tilted = new double[weights.length];
        double sum = 0;
        for (int b = 0; b < tilted.length; b++) {
            tilted[b] = weights[b] * Math.exp(tilt * shows[b]);
            sum += tilted[b];
        }
        for (int b = 0; b < tilted.length; b++) {
            tilted[b] /= sum;
        }
        return tilted;
    }
}

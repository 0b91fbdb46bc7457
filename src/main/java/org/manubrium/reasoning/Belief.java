package org.manubrium.reasoning;

import java.util.HashMap;
import java.util.Map;

/**
 * What is thought of the differential after some steps. Immutable.
 *
 * <p>Given a body, outcomes of different signs are independent. How an examiner misreads is fixed for a patient and a sign:
 * it is a share between 0 and 1 that decides every reading of that sign, and each reading narrows where it can lie. So the
 * same step again, and another step that would read the same sign alike, add nothing.
 */
public final class Belief {
    /** What is left of a body whose reading contradicts an earlier one of the same sign. */
    private static final double CONTRADICTED = 1e-3;

    private final Evidence evidence;
    private final double[] bodies;

    /** For each sign that was read, where the examiner's share can lie in each body: its least and its most. */
    private final Map<Integer, double[][]> read;

    private Belief(Evidence evidence, double[] bodies, Map<Integer, double[][]> read) {
        this.evidence = evidence;
        this.bodies = bodies;
        this.read = read;
    }

    static Belief first(Evidence evidence, double[] weights) {
        return new Belief(evidence, normal(weights), Map.of());
    }

    private static double[] normal(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        if (sum <= 0) {
            throw new IllegalStateException("an outcome was seen that no body can show");
        }
        double[] shares = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            shares[i] = weights[i] / sum;
        }
        return shares;
    }

    /** The chance of each diagnosis, in the order of the differential. */
    public double[] chances() {
        double[] chances = new double[evidence.diagnoses];
        for (int b = 0; b < bodies.length; b++) {
            chances[evidence.owner[b]] += bodies[b];
        }
        return chances;
    }

    /** The uncertainty about the diagnosis, in bits. */
    public double bits() {
        return Bits.of(chances());
    }

    /** The place of the likeliest diagnosis; of equals the first. */
    public int leader() {
        double[] chances = chances();
        int best = 0;
        for (int h = 1; h < chances.length; h++) {
            if (chances[h] > chances[best]) {
                best = h;
            }
        }
        return best;
    }

    /** The chance of what is true of the patient. */
    public double chanceOfTruth() {
        double[] chances = chances();
        double sum = 0;
        for (int h = 0; h < chances.length; h++) {
            sum += evidence.possible().get(h).holds() ? chances[h] : 0;
        }
        return sum;
    }

    /** What is thought after a step showed what the patient shows. */
    public Belief see(int column) {
        return see(column, evidence.columns().get(column).found());
    }

    /** What is thought after a step showed this outcome, by its place. */
    public Belief see(int column, int outcome) {
        int[] shown = evidence.shown[column];
        double[][] sums = evidence.sums(column);
        double[][] before = read.get(evidence.sign[column]);
        double[][] after = new double[2][bodies.length];
        double[] weights = new double[bodies.length];
        for (int b = 0; b < bodies.length; b++) {
            double least = before == null ? 0 : before[0][b];
            double most = before == null ? 1 : before[1][b];
            double from = Math.max(least, sums[shown[b]][outcome]);
            double to = Math.min(most, sums[shown[b]][outcome + 1]);
            boolean possible = to > from;
            weights[b] = bodies[b] * (possible ? (to - from) / (most - least) : before == null ? 0 : CONTRADICTED);
            after[0][b] = possible ? from : least;
            after[1][b] = possible ? to : most;
        }
        Map<Integer, double[][]> all = new HashMap<>(read);
        all.put(evidence.sign[column], after);
        return new Belief(evidence, normal(weights), all);
    }

    /** By how many bits a step is expected to lessen the uncertainty. Never below 0. */
    public double information(int column) {
        double[][] joint = joint(column);
        double[] outcomes = new double[joint[0].length];
        double both = 0;
        for (double[] row : joint) {
            for (int o = 0; o < row.length; o++) {
                outcomes[o] += row[o];
                both += Bits.term(row[o]);
            }
        }
        return Math.max(0, bits() + Bits.of(outcomes) - both);
    }

    /** The chance of each outcome of a step, by its place. */
    public double[] outcomes(int column) {
        double[][] joint = joint(column);
        double[] outcomes = new double[joint[0].length];
        for (double[] row : joint) {
            for (int o = 0; o < row.length; o++) {
                outcomes[o] += row[o];
            }
        }
        return outcomes;
    }

    /** The chance of each diagnosis together with each outcome. */
    private double[][] joint(int column) {
        double[][] before = read.get(evidence.sign[column]);
        return before == null ? fresh(column) : known(column, before);
    }

    private double[][] fresh(int column) {
        double[][] chances = evidence.chances(column);
        int[] shown = evidence.shown[column];
        double[][] there = new double[evidence.diagnoses][chances.length];
        for (int b = 0; b < bodies.length; b++) {
            there[evidence.owner[b]][shown[b]] += bodies[b];
        }
        double[][] joint = new double[evidence.diagnoses][chances.length];
        for (int h = 0; h < joint.length; h++) {
            for (int t = 0; t < chances.length; t++) {
                for (int o = 0; there[h][t] > 0 && o < chances.length; o++) {
                    joint[h][o] += there[h][t] * chances[t][o];
                }
            }
        }
        return joint;
    }

    private double[][] known(int column, double[][] before) {
        double[][] sums = evidence.sums(column);
        int[] shown = evidence.shown[column];
        double[][] joint = new double[evidence.diagnoses][sums.length];
        for (int b = 0; b < bodies.length; b++) {
            double room = before[1][b] - before[0][b];
            for (int o = 0; o < sums.length; o++) {
                double from = Math.max(before[0][b], sums[shown[b]][o]);
                double to = Math.min(before[1][b], sums[shown[b]][o + 1]);
                joint[evidence.owner[b]][o] += to > from ? bodies[b] * (to - from) / room : 0;
            }
        }
        return joint;
    }
}

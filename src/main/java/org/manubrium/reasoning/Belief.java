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
    private final double[] chances;
    private final double bits;

    /** For each sign that was read, where the examiner's share can lie in each body: its least and its most. */
    private final Map<Integer, double[][]> read;

    private Belief(Evidence evidence, double[] bodies, Map<Integer, double[][]> read) {
        this.evidence = evidence;
        this.bodies = bodies;
        this.read = read;
        this.chances = new double[evidence.diagnoses];
        for (int b = 0; b < bodies.length; b++) {
            chances[evidence.owner[b]] += bodies[b];
        }
        this.bits = Bits.of(chances);
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
        return chances.clone();
    }

    /** The uncertainty about the diagnosis, in bits. */
    public double bits() {
        return bits;
    }

    /** The place of the likeliest diagnosis; of equals the first. */
    public int leader() {
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
        double[] joint = joint(column);
        double both = 0;
        for (double chance : joint) {
            both += Bits.term(chance);
        }
        return Math.max(0, bits + Bits.of(summed(joint)) - both);
    }

    /** The chance of each outcome of a step, by its place. */
    public double[] outcomes(int column) {
        return summed(joint(column));
    }

    private double[] summed(double[] joint) {
        double[] outcomes = new double[joint.length / evidence.diagnoses];
        for (int i = 0; i < joint.length; i++) {
            outcomes[i % outcomes.length] += joint[i];
        }
        return outcomes;
    }

    /** The chance of each diagnosis together with each outcome, diagnosis by diagnosis. */
    private double[] joint(int column) {
        double[][] before = read.get(evidence.sign[column]);
        return before == null ? fresh(column) : known(column, before);
    }

    private double[] fresh(int column) {
        double[][] kernel = evidence.chances(column);
        int size = kernel.length;
        int[] shown = evidence.shown[column];
        double[] there = new double[evidence.diagnoses * size];
        for (int b = 0; b < bodies.length; b++) {
            there[evidence.owner[b] * size + shown[b]] += bodies[b];
        }
        double[] joint = new double[there.length];
        for (int cell = 0; cell < there.length; cell++) {
            if (there[cell] > 0) {
                double[] row = kernel[cell % size];
                int first = cell - cell % size;
                for (int o = 0; o < size; o++) {
                    joint[first + o] += there[cell] * row[o];
                }
            }
        }
        return joint;
    }

    private double[] known(int column, double[][] before) {
        double[][] sums = evidence.sums(column);
        int size = sums.length;
        int[] shown = evidence.shown[column];
        double[] joint = new double[evidence.diagnoses * size];
        for (int b = 0; b < bodies.length; b++) {
            double least = before[0][b];
            double most = before[1][b];
            double[] row = sums[shown[b]];
            for (int o = 0; o < size; o++) {
                double room = Math.min(most, row[o + 1]) - Math.max(least, row[o]);
                joint[evidence.owner[b] * size + o] += room > 0 ? bodies[b] * room / (most - least) : 0;
            }
        }
        return joint;
    }
}

package org.manubrium.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.reasoning.Advice;
import org.manubrium.reasoning.Belief;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.Possible;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.plan.Ways;
import org.manubrium.tables.Tables;

/** What one more finding and the choice of the next step cost, over 40 diagnoses and 180 steps. */
final class ReasoningBench {
    private static final int DIAGNOSES = 40;
    private static final int BODIES = 30;
    private static final int STEPS = 180;
    private static final int OUTCOMES = 4;
    private static final int ROUNDS = 200;

    private ReasoningBench() {}

    static void run() {
        Evidence evidence = new Evidence(drawn(new Random(7)));
        Advice advice = new Advice(evidence, new Ways(Tables.shipped().examination()));
        double[] sums = new double[1];
        double baseline = Load.medianMillis(ROUNDS, () -> sums[0] += everyBodyOnce(evidence));
        double next = Load.medianMillis(ROUNDS, () -> {
            Belief belief = evidence.start().see(3).see(50);
            sums[0] += advice.byBits(belief, "lying-45", Set.of(3, 50)).get(0).bits();
        });
        say("reading every outcome of every body once (baseline)", baseline);
        say("posterior and next best, 40 diagnoses x 180 steps", next);
        System.out.printf(Locale.ROOT, "%-60s %10.1f%n", "  ratio to the baseline", next / baseline);
    }

    private static double everyBodyOnce(Evidence evidence) {
        double sum = 0;
        for (Column column : evidence.columns()) {
            for (int b = 0; b < DIAGNOSES * BODIES; b++) {
                sum += column.shown(b);
            }
        }
        return sum;
    }

    private static Weighing drawn(Random random) {
        List<Possible> possible = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (int h = 0; h < DIAGNOSES; h++) {
            possible.add(new Possible("d" + h, "d" + h, 1.0 / DIAGNOSES, h == 0));
            for (int b = 0; b < BODIES; b++) {
                owners.add(h);
                weights.add(1.0 / BODIES);
            }
        }
        List<Column> columns = new ArrayList<>();
        for (int s = 0; s < STEPS; s++) {
            int[] shown = random.ints((long) DIAGNOSES * BODIES, 0, OUTCOMES).toArray();
            columns.add(new Column(
                    new Item("m" + s, Side.NONE, ""),
                    "m" + s,
                    10,
                    List.of("lying-45"),
                    "s" + s,
                    List.of("0", "1", "2", "3"),
                    shown[0],
                    Column.packed(shown),
                    0));
        }
        return new Weighing(possible, owners, weights, columns, List.of(kernel()), List.of(), List.of());
    }

    private static List<Double> kernel() {
        List<Double> kernel = new ArrayList<>();
        for (int i = 0; i < OUTCOMES * OUTCOMES; i++) {
            kernel.add(i % (OUTCOMES + 1) == 0 ? 0.94 : 0.02);
        }
        return kernel;
    }

    private static void say(String what, double millis) {
        System.out.printf(Locale.ROOT, "%-60s %10.2f ms%n", what, millis);
    }
}

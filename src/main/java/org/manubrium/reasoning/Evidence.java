package org.manubrium.reasoning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.manubrium.examination.Item;

/** A weighing laid out as arrays, ready to be reckoned with. */
public final class Evidence {
    private final Weighing weighing;
    final int diagnoses;
    final int[] owner;
    final int[][] shown;
    final int[] sign;

    /** For each table of misreadings, what is there, what is read: the chance, and the chance of that or anything before. */
    final double[][][] chance;

    final double[][][] upTo;

    public Evidence(Weighing weighing) {
        this.weighing = weighing;
        this.diagnoses = weighing.possible().size();
        this.owner = weighing.owners().stream().mapToInt(Integer::intValue).toArray();
        this.shown = new int[weighing.columns().size()][];
        this.sign = new int[shown.length];
        Map<String, Integer> signs = new HashMap<>();
        for (int c = 0; c < shown.length; c++) {
            Column column = weighing.columns().get(c);
            shown[c] = column.shown().chars().map(ch -> ch - Column.ZERO).toArray();
            sign[c] = signs.computeIfAbsent(column.sign(), s -> signs.size());
        }
        this.chance = new double[weighing.kernels().size()][][];
        this.upTo = new double[chance.length][][];
        for (int k = 0; k < chance.length; k++) {
            chance[k] = square(weighing.kernels().get(k));
            upTo[k] = summed(chance[k]);
        }
    }

    private static double[][] square(List<Double> rows) {
        int size = (int) Math.round(Math.sqrt(rows.size()));
        double[][] table = new double[size][size];
        for (int i = 0; i < rows.size(); i++) {
            table[i / size][i % size] = rows.get(i);
        }
        return table;
    }

    private static double[][] summed(double[][] table) {
        double[][] sums = new double[table.length][table.length + 1];
        for (int row = 0; row < table.length; row++) {
            for (int i = 0; i < table.length; i++) {
                sums[row][i + 1] = sums[row][i] + table[row][i];
            }
        }
        return sums;
    }

    public Weighing weighing() {
        return weighing;
    }

    public List<Possible> possible() {
        return weighing.possible();
    }

    public List<Column> columns() {
        return weighing.columns();
    }

    /** The number of the step that reads this item; empty if it tells nothing here. */
    public OptionalInt column(Item item) {
        for (int c = 0; c < shown.length; c++) {
            if (columns().get(c).reads(item)) {
                return OptionalInt.of(c);
            }
        }
        return OptionalInt.empty();
    }

    /** What is thought before anything is examined. */
    public Belief start() {
        double[] weights = new double[owner.length];
        for (int b = 0; b < weights.length; b++) {
            weights[b] = weighing.weights().get(b) * possible().get(owner[b]).prior();
        }
        return Belief.first(this, weights);
    }

    double[][] chances(int column) {
        return chance[columns().get(column).kernel()];
    }

    double[][] sums(int column) {
        return upTo[columns().get(column).kernel()];
    }
}

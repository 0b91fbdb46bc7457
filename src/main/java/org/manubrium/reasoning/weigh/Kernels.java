package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.List;

/**
 * Tables of misreadings. A sign is read rightly with the tabled chance; what is left goes to the other outcomes, less to
 * those further off. Each table is kept once.
 */
final class Kernels {
    private static final double PLACES = 1e6;

    private final double decline;
    private final List<List<Double>> tables = new ArrayList<>();

    Kernels(double decline) {
        this.decline = decline;
    }

    List<List<Double>> tables() {
        return tables;
    }

    /** The number of the table for outcomes that lie so far apart and are misread so often. */
    int of(int[][] apart, double misread) {
        List<Double> table = new ArrayList<>();
        for (int there = 0; there < apart.length; there++) {
            double[] shares = new double[apart.length];
            double sum = 0;
            for (int read = 0; read < shares.length; read++) {
                shares[read] = read == there ? 0 : Math.pow(decline, apart[there][read] - 1);
                sum += shares[read];
            }
            for (int read = 0; read < shares.length; read++) {
                double chance = read == there ? (sum == 0 ? 1 : 1 - misread) : misread * shares[read] / sum;
                table.add(Math.rint(chance * PLACES) / PLACES);
            }
        }
        if (!tables.contains(table)) {
            tables.add(table);
        }
        return tables.indexOf(table);
    }
}

package org.manubrium.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;

/**
 * Belief against a slow reading of what a misreading is: the hidden share of each sign is one of so many equal cells, each
 * body keeps the cells in which it would have been read as it was, and its weight falls with them.
 */
class SlowBeliefTest {
    private static final int CELLS = 32;
    private static final int OUTCOMES = 3;
    private static final double CONTRADICTED = 1e-3;
    private static final double CLOSE = 1e-9;

    private final List<Possible> possible = List.of(
            new Possible("a", "a", 0.5, true), new Possible("b", "b", 0.3, false), new Possible("c", "c", 0.2, false));

    /** Two signs with two steps each, seven bodies, a table of misreadings in whole cells. */
    private Weighing weighing(Random chance) {
        List<Integer> owners = List.of(0, 0, 1, 1, 1, 2, 2);
        List<Double> weights =
                owners.stream().map(owner -> 0.1 + chance.nextDouble()).toList();
        List<Column> columns = new ArrayList<>();
        for (String sign : List.of("one", "two", "one", "two", "one")) {
            int[] shown =
                    owners.stream().mapToInt(owner -> chance.nextInt(OUTCOMES)).toArray();
            columns.add(new Column(
                    new Item("m" + columns.size(), Side.NONE, ""),
                    "step",
                    5,
                    List.of("lying-45"),
                    sign,
                    List.of("0", "1", "2"),
                    shown[0],
                    Column.packed(shown),
                    0));
        }
        return new Weighing(possible, owners, weights, columns, List.of(kernel(chance)), List.of(), List.of());
    }

    private static List<Double> kernel(Random chance) {
        List<Double> rows = new ArrayList<>();
        for (int there = 0; there < OUTCOMES; there++) {
            int one = 1 + chance.nextInt(CELLS - 2);
            int two = one + 1 + chance.nextInt(CELLS - one - 1);
            rows.addAll(List.of(one / (double) CELLS, (two - one) / (double) CELLS, (CELLS - two) / (double) CELLS));
        }
        return rows;
    }

    /** What is thought, cell by cell. */
    private static final class Slow {
        private final Weighing weighing;
        private final double[] weights;
        private final List<Map<String, BitSet>> kept = new ArrayList<>();

        Slow(Weighing weighing) {
            this.weighing = weighing;
            this.weights = new double[weighing.owners().size()];
            for (int b = 0; b < weights.length; b++) {
                Possible owner = weighing.possible().get(weighing.owners().get(b));
                weights[b] = weighing.weights().get(b) * owner.prior();
                kept.add(new HashMap<>());
            }
        }

        private BitSet cells(int body, String sign) {
            BitSet all = new BitSet(CELLS);
            all.set(0, CELLS);
            return kept.get(body).getOrDefault(sign, all);
        }

        /** The cells in which this body is read so, of those that are left. */
        private BitSet read(int body, Column column, int outcome) {
            List<Double> kernel = weighing.kernels().get(column.kernel());
            BitSet left = new BitSet(CELLS);
            BitSet cells = cells(body, column.sign());
            for (int cell = cells.nextSetBit(0); cell >= 0; cell = cells.nextSetBit(cell + 1)) {
                double middle = (cell + 0.5) / CELLS;
                int is = 0;
                double sum = kernel.get(column.shown(body) * OUTCOMES);
                while (middle > sum) {
                    is++;
                    sum += kernel.get(column.shown(body) * OUTCOMES + is);
                }
                left.set(cell, is == outcome);
            }
            return left;
        }

        void see(Column column, int outcome) {
            for (int b = 0; b < weights.length; b++) {
                BitSet before = cells(b, column.sign());
                BitSet after = read(b, column, outcome);
                weights[b] *= after.isEmpty() ? CONTRADICTED : after.cardinality() / (double) before.cardinality();
                kept.get(b).put(column.sign(), after.isEmpty() ? before : after);
            }
        }

        double[] chances() {
            double[] sums = new double[weighing.possible().size()];
            for (int b = 0; b < weights.length; b++) {
                sums[weighing.owners().get(b)] += weights[b];
            }
            return shares(sums);
        }

        /** How much less uncertain the diagnosis is once the outcome is known. */
        double information(Column column) {
            double[][] joint = new double[OUTCOMES][weighing.possible().size()];
            double all = Arrays.stream(weights).sum();
            for (int b = 0; b < weights.length; b++) {
                double before = cells(b, column.sign()).cardinality();
                for (int o = 0; o < OUTCOMES; o++) {
                    joint[o][weighing.owners().get(b)] +=
                            weights[b] / all * read(b, column, o).cardinality() / before;
                }
            }
            double expected = 0;
            for (double[] row : joint) {
                double chance = Arrays.stream(row).sum();
                expected += chance > 0 ? chance * bits(shares(row)) : 0;
            }
            return bits(chances()) - expected;
        }

        private static double[] shares(double[] sums) {
            double all = Arrays.stream(sums).sum();
            return Arrays.stream(sums).map(sum -> sum / all).toArray();
        }

        private static double bits(double[] chances) {
            return Arrays.stream(chances)
                    .filter(chance -> chance > 0)
                    .map(chance -> -chance * Math.log(chance) / Math.log(2))
                    .sum();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void everyReadingMovesBeliefAsCellsCountedOneByOneDo(int seed) {
        Random chance = new Random(seed);
        Weighing weighing = weighing(chance);
        Belief quick = new Evidence(weighing).start();
        Slow slow = new Slow(weighing);
        for (int step = 0; step < weighing.columns().size(); step++) {
            for (int column = 0; column < weighing.columns().size(); column++) {
                assertThat(quick.information(column))
                        .isCloseTo(slow.information(weighing.columns().get(column)), within(CLOSE));
            }
            int outcome = chance.nextInt(OUTCOMES);
            quick = quick.see(step, outcome);
            slow.see(weighing.columns().get(step), outcome);

            assertThat(quick.chances()).containsExactly(slow.chances(), within(CLOSE));
            double most = Arrays.stream(slow.chances()).max().orElseThrow();
            assertThat(slow.chances()[quick.leader()]).isCloseTo(most, within(CLOSE));
        }
    }
}

package org.manubrium.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.manubrium.reasoning.plan.Planner;
import org.manubrium.reasoning.plan.Task;

/**
 * The shortest examination that suffices: with what the patient shows, the true diagnosis becomes likely enough. Steps and
 * moves count, in seconds. It knows the patient, so it is a yardstick for looking back, not a way of examining.
 *
 * <p>Of up to {@value #EXACT} steps every set is weighed against the best found so far, and the answer is exact. Of more, the
 * {@value #EXACT} that speak most for the truth are searched, and the answer carries a bound: no examination can be shorter.
 */
public final class Shortest {
    /** From how many steps the exact search chooses. */
    public static final int EXACT = 12;

    /** A way that has not come to an end by then is given up. */
    private static final int LONGEST = 30;

    private final Evidence evidence;
    private final Planner planner;
    private final String start;

    public Shortest(Evidence evidence, Planner planner, String start) {
        this.evidence = evidence;
        this.planner = planner;
        this.start = start;
    }

    /**
     * An examination that suffices.
     *
     * @param columns its steps
     * @param seconds steps and moves
     * @param chance how likely the truth is after it
     * @param exact whether none is shorter
     * @param atLeast none that suffices is shorter than this, in seconds
     */
    public record Sufficient(List<Integer> columns, int seconds, double chance, boolean exact, int atLeast) {
        public Sufficient {
            columns = List.copyOf(columns);
        }
    }

    /** The shortest that suffices; empty if not even all steps together do. */
    public Optional<Sufficient> find(double threshold) {
        List<Integer> all =
                IntStream.range(0, evidence.columns().size()).boxed().toList();
        boolean exact = all.size() <= EXACT;
        List<Integer> quick = quick(all, threshold);
        Search search = new Search(threshold, exact ? all : promising(all, quick));
        search.weigh(seen(quick), quick);
        search.from(0, evidence.start(), List.of(), 0);
        return search.found(exact, exact ? 0 : new Bound(evidence).seconds(all, threshold));
    }

    /** One step after the other, each the one that then speaks most for the truth, until it is likely enough. */
    private List<Integer> quick(List<Integer> all, double threshold) {
        List<Integer> taken = new ArrayList<>();
        Belief belief = evidence.start();
        while (belief.chanceOfTruth() < threshold && taken.size() < LONGEST) {
            Belief now = belief;
            List<Voice> voices = voices(now, all.stream().filter(c -> !taken.contains(c)));
            if (voices.isEmpty() || voices.get(0).strength() <= 0) {
                break;
            }
            taken.add(voices.get(0).column());
            belief = belief.see(voices.get(0).column());
        }
        return taken;
    }

    private Belief seen(List<Integer> columns) {
        Belief belief = evidence.start();
        for (int column : columns) {
            belief = belief.see(column);
        }
        return belief;
    }

    /** The quick way's steps, and with them those that speak most for the truth by themselves. */
    private List<Integer> promising(List<Integer> all, List<Integer> quick) {
        Stream<Integer> single = voices(evidence.start(), all.stream().filter(c -> !quick.contains(c))).stream()
                .map(Voice::column);
        return Stream.concat(quick.stream(), single).limit(EXACT).sorted().toList();
    }

    /** How much a step speaks for the truth. */
    private record Voice(int column, double strength) {}

    /** The steps that speak most for the truth, first; of equals in table order. */
    private List<Voice> voices(Belief before, Stream<Integer> columns) {
        return columns.map(c -> new Voice(c, speaksFor(before, c)))
                .sorted(Comparator.comparingDouble(Voice::strength).reversed())
                .toList();
    }

    /** How much a step raises the chance of the truth, against its time. */
    private double speaksFor(Belief before, int column) {
        double gain = before.see(column).chanceOfTruth() - before.chanceOfTruth();
        return gain / Math.sqrt(Math.max(1, evidence.columns().get(column).seconds()));
    }

    /** Sets in the order of their steps; one that already takes as long as the best is not followed. */
    private final class Search {
        private final double threshold;
        private final List<Integer> among;
        private List<Integer> best = List.of();
        private int least = Integer.MAX_VALUE;
        private double chance;

        Search(double threshold, List<Integer> among) {
            this.threshold = threshold;
            this.among = among;
        }

        void from(int next, Belief belief, List<Integer> taken, int doing) {
            if (doing >= least) {
                return;
            }
            weigh(belief, taken);
            for (int i = next; i < among.size(); i++) {
                int column = among.get(i);
                List<Integer> more = new ArrayList<>(taken);
                more.add(column);
                from(
                        i + 1,
                        belief.see(column),
                        more,
                        doing + evidence.columns().get(column).seconds());
            }
        }

        void weigh(Belief belief, List<Integer> taken) {
            if (belief.chanceOfTruth() < threshold) {
                return;
            }
            int seconds = seconds(taken);
            if (seconds < least) {
                least = seconds;
                best = taken;
                chance = belief.chanceOfTruth();
            }
        }

        Optional<Sufficient> found(boolean exact, int bound) {
            return least == Integer.MAX_VALUE
                    ? Optional.empty()
                    : Optional.of(new Sufficient(best, least, chance, exact, exact ? least : bound));
        }
    }

    /** Steps and moves of a set, planned as well as can be. */
    public int seconds(List<Integer> columns) {
        List<Task> tasks = columns.stream()
                .map(c -> evidence.columns().get(c))
                .map(step -> new Task(step.label(), step.positions(), step.seconds()))
                .toList();
        return planner.best(tasks, start).seconds();
    }
}

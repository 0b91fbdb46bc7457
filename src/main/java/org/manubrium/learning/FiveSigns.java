package org.manubrium.learning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Chooses what comes today: at most {@value #MOST} facts, whatever was missed before. First what went wrong in a marked
 * examination and has not been put right since, then what is likely forgotten, the likeliest first, then what is new, then
 * the rest. No kind of question comes more than twice while another is to be had, and neighbours are of different kinds:
 * mixed practice is harder than blocked and lasts longer.
 *
 * <p>After a wrong answer what was known before counts no more: the fact begins again with the explanation that was read.
 */
public final class FiveSigns {
    /** How many signs a day. */
    public static final int MOST = 5;

    /** Below this probability something counts as forgotten. */
    static final double FORGOTTEN = 0.8;

    /** How many of one kind, while there are others. */
    public static final int OF_ONE_KIND = 2;

    private static final int WISHED = 3;

    private final Forgetting forgetting;

    public FiveSigns(Forgetting forgetting) {
        this.forgetting = forgetting;
    }

    /**
     * @param facts everything that can be asked, as "kind:what"
     * @param met everything this student was asked, in order of time
     * @param wished facts that went wrong in marked examinations, the worst first
     * @param now in seconds from the moment from which {@code met} counts
     * @param seed what is new is taken in an order drawn from it
     */
    public List<String> choose(Set<String> facts, List<Met> met, List<String> wished, double now, long seed) {
        Map<String, Double> known = known(met, now);
        List<String> shuffled = new ArrayList<>(facts);
        Collections.sort(shuffled);
        Collections.shuffle(shuffled, new Random(seed));
        Comparator<String> likeliestForgotten = Comparator.comparingDouble(known::get);
        List<String> old = shuffled.stream()
                .filter(known::containsKey)
                .sorted(likeliestForgotten)
                .toList();
        List<String> inOrder = Stream.of(
                        wished.stream().filter(facts::contains).distinct().limit(WISHED),
                        old.stream().filter(fact -> known.getOrDefault(fact, 0.0) < FORGOTTEN),
                        shuffled.stream().filter(fact -> !known.containsKey(fact)),
                        old.stream())
                .flatMap(some -> some)
                .distinct()
                .toList();
        return mixed(taken(inOrder));
    }

    private Map<String, Double> known(List<Met> met, double now) {
        Map<String, List<Double>> times = new LinkedHashMap<>();
        for (Met one : met) {
            List<Double> own = times.computeIfAbsent(one.fact(), fact -> new ArrayList<>());
            if (!one.right()) {
                own.clear();
            }
            own.add(one.at());
        }
        Map<String, Double> known = new LinkedHashMap<>();
        times.forEach((fact, own) -> known.put(fact, forgetting.recall(own, now)));
        return known;
    }

    private static List<String> taken(List<String> inOrder) {
        Set<String> taken = new LinkedHashSet<>();
        for (String fact : inOrder) {
            boolean room =
                    taken.stream().filter(t -> kind(t).equals(kind(fact))).count() < OF_ONE_KIND;
            if (room && taken.size() < MOST) {
                taken.add(fact);
            }
        }
        inOrder.stream().filter(fact -> taken.size() < MOST).forEach(taken::add);
        return List.copyOf(taken);
    }

    /** The same, as far as can be with no two of a kind side by side. */
    private static List<String> mixed(List<String> taken) {
        List<String> left = new ArrayList<>(taken);
        List<String> mixed = new ArrayList<>();
        while (!left.isEmpty()) {
            String last = mixed.isEmpty() ? "" : kind(mixed.get(mixed.size() - 1));
            String next = left.stream()
                    .filter(fact -> !kind(fact).equals(last))
                    .max(Comparator.comparingLong(fact -> left.stream()
                            .filter(other -> kind(other).equals(kind(fact)))
                            .count()))
                    .orElse(left.get(0));
            left.remove(next);
            mixed.add(next);
        }
        return List.copyOf(mixed);
    }

    private static String kind(String fact) {
        return fact.substring(0, Math.max(0, fact.indexOf(':')));
    }
}

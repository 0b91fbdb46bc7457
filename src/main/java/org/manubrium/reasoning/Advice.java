package org.manubrium.reasoning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.manubrium.reasoning.plan.Ways;

/** Which step promises most. It knows what was seen and nothing of what is still to be found. */
public final class Advice {
    /** What promises less is not worth doing for the diagnosis, in bits. */
    public static final double LITTLE = 0.05;

    private final Evidence evidence;
    private final Ways ways;

    public Advice(Evidence evidence, Ways ways) {
        this.evidence = evidence;
        this.ways = ways;
    }

    /**
     * What a step promises.
     *
     * @param column its number
     * @param bits by how much it is expected to lessen the uncertainty
     * @param seconds the step with the move to where it can be done
     */
    public record Promise(int column, double bits, int seconds) {
        /** Bits for each minute it takes. */
        public double perMinute() {
            return bits * 60 / Math.max(1, seconds);
        }
    }

    /** What each step promises, the most bits first; of equals the one that takes less, then table order. */
    public List<Promise> byBits(Belief belief, String position, Set<Integer> done) {
        return ranked(
                belief,
                position,
                done,
                Comparator.comparingDouble(Promise::bits).reversed().thenComparingInt(Promise::seconds));
    }

    /** The step that promises most for its time, if any is worth doing. */
    public Optional<Promise> best(Belief belief, String position, Set<Integer> done) {
        return ranked(
                        belief,
                        position,
                        done,
                        Comparator.comparingDouble(Promise::perMinute).reversed())
                .stream()
                .filter(promise -> promise.bits() >= LITTLE)
                .findFirst();
    }

    private List<Promise> ranked(Belief belief, String position, Set<Integer> done, Comparator<Promise> order) {
        return IntStream.range(0, evidence.columns().size())
                .filter(column -> !done.contains(column))
                .mapToObj(column -> promise(belief, position, column))
                .sorted(order)
                .toList();
    }

    private Promise promise(Belief belief, String position, int column) {
        Column step = evidence.columns().get(column);
        int seconds = step.seconds() + ways.seconds(position, step.positions());
        return new Promise(column, belief.information(column), seconds);
    }
}

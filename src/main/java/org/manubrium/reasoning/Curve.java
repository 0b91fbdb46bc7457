package org.manubrium.reasoning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.manubrium.reasoning.Advice.Promise;
import org.manubrium.reasoning.plan.Ways;

/** How an examination narrows the differential, step by step. */
public final class Curve {
    /** More steps are not followed: by then everything that tells has been done. */
    private static final int LONGEST = 40;

    private final Evidence evidence;
    private final Ways ways;

    public Curve(Evidence evidence, Ways ways) {
        this.evidence = evidence;
        this.ways = ways;
    }

    /**
     * What is thought after a step.
     *
     * @param seconds bedside seconds when the step was done
     * @param label the step; blank for the start
     * @param bits the uncertainty that is left
     * @param leader the likeliest diagnosis, with its chance
     * @param truth the chance of what is true of the patient
     */
    public record Point(int seconds, String label, double bits, String leader, double chance, double truth) {}

    /** A step that was done, and the bedside seconds when it was done. */
    public record Done(int column, int seconds) {}

    /** The curve of what was done, as the patient's signs truly were. A step done again adds no point. */
    public List<Point> of(List<Done> steps) {
        Belief belief = evidence.start();
        List<Point> points = new ArrayList<>(List.of(point(0, "", belief)));
        Set<Integer> seen = new HashSet<>();
        for (Done step : steps) {
            if (seen.add(step.column())) {
                belief = belief.see(step.column());
                points.add(point(
                        step.seconds(), evidence.columns().get(step.column()).label(), belief));
            }
        }
        return points;
    }

    /**
     * The steps of an examiner who always does what then promises most for its time, without knowing the patient, until the
     * truth is likely enough or nothing promises anything.
     *
     * @param threshold how likely is enough, 0..1
     */
    public List<Done> efficient(String start, double threshold) {
        Advice advice = new Advice(evidence, ways);
        Belief belief = evidence.start();
        List<Done> steps = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        String position = start;
        int seconds = 0;
        while (steps.size() < LONGEST && belief.chanceOfTruth() < threshold) {
            Optional<Promise> best = advice.best(belief, position, done);
            if (best.isEmpty()) {
                break;
            }
            int column = best.get().column();
            seconds += best.get().seconds();
            position = nearest(position, evidence.columns().get(column));
            belief = belief.see(column);
            done.add(column);
            steps.add(new Done(column, seconds));
        }
        return steps;
    }

    private String nearest(String position, Column step) {
        OptionalInt least = step.positions().stream()
                .mapToInt(to -> ways.seconds(position, to))
                .min();
        return step.positions().stream()
                .filter(to -> ways.seconds(position, to) == least.orElse(0))
                .findFirst()
                .orElse(position);
    }

    private Point point(int seconds, String label, Belief belief) {
        double[] chances = belief.chances();
        int leader = belief.leader();
        return new Point(
                seconds,
                label,
                Bits.of(chances),
                evidence.possible().get(leader).name(),
                chances[leader],
                belief.chanceOfTruth());
    }
}

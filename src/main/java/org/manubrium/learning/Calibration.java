package org.manubrium.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far what somebody said of their sureness agrees with what came true. The mean square error (Brier 1950) is split into
 * reliability less resolution plus uncertainty (Murphy, Journal of Applied Meteorology 1973;12:595), which is exact because
 * sureness is said in fixed steps; the range of a share is Wilson's (JASA 1927;22:209). Citations from memory; numbers
 * checked against R.
 *
 * <p>Judgements within one case hang together, so ranges are too narrow rather than too wide.
 *
 * @param n how many judgements
 * @param over mean sureness less the share that came true: above 0 is over-sure
 * @param steps one for each step that was used, the lowest first
 */
public record Calibration(
        int n, double brier, double reliability, double resolution, double uncertainty, double over, List<Step> steps) {
    /** The fewest judgements of which one number says anything, and of which steps do. */
    public static final int ENOUGH = 20;

    public static final int ENOUGH_FOR_STEPS = 50;

    /** A step with fewer says nothing by itself. */
    public static final int ENOUGH_IN_STEP = 10;

    private static final double Z = 1.959963984540054;

    public Calibration {
        steps = List.copyOf(steps);
    }

    /** One judgement: {@code p} 0..1. */
    public record Judgement(double p, boolean right) {}

    /** What was said with one sureness: how often, the share that came true, and its 95 per cent range. */
    public record Step(double p, int n, double share, double low, double high) {
        private static Step of(double p, int n, long right) {
            double share = right / (double) n;
            double z2 = Z * Z;
            double centre = (share + z2 / (2 * n)) / (1 + z2 / n);
            double half = Z * Math.sqrt(share * (1 - share) / n + z2 / (4.0 * n * n)) / (1 + z2 / n);
            return new Step(p, n, share, centre - half, centre + half);
        }
    }

    /** @throws IllegalArgumentException for no judgement at all */
    public static Calibration of(List<Judgement> judgements) {
        if (judgements.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to calibrate");
        }
        List<Step> steps = steps(judgements);
        int n = judgements.size();
        double share = judgements.stream().filter(Judgement::right).count() / (double) n;
        double brier = mean(judgements, j -> square(j.p() - (j.right() ? 1 : 0)));
        double reliability = steps.stream()
                        .mapToDouble(s -> s.n() * square(s.p() - s.share()))
                        .sum()
                / n;
        double resolution = steps.stream()
                        .mapToDouble(s -> s.n() * square(s.share() - share))
                        .sum()
                / n;
        double over = mean(judgements, Judgement::p) - share;
        return new Calibration(n, brier, reliability, resolution, share * (1 - share), over, steps);
    }

    private static List<Step> steps(List<Judgement> judgements) {
        Map<Double, List<Judgement>> byP = new TreeMap<>();
        judgements.forEach(
                j -> byP.computeIfAbsent(j.p(), p -> new ArrayList<>()).add(j));
        List<Step> steps = new ArrayList<>();
        byP.forEach((p, own) -> steps.add(
                Step.of(p, own.size(), own.stream().filter(Judgement::right).count())));
        return steps;
    }

    private static double mean(List<Judgement> judgements, java.util.function.ToDoubleFunction<Judgement> of) {
        return judgements.stream().mapToDouble(of).average().orElseThrow();
    }

    private static double square(double x) {
        return x * x;
    }
}

package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.manubrium.anatomy.Site;
import org.manubrium.examination.Examination;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Quantity;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Fit;
import org.manubrium.reasoning.weigh.Calibration.State;

/** Weighs the bodies of each diagnosis so that they show their signs as often as was published. */
final class Calibrating {
    /** How much of a structure must be lost for its state to be there. */
    private static final double HURT = 0.3;

    private final Examination examination;
    private final List<Calibration> calibrations;
    private final List<Column> columns;
    private final List<List<Double>> kernels;

    Calibrating(
            Examination examination, List<Calibration> calibrations, List<Column> columns, List<List<Double>> kernels) {
        this.examination = examination;
        this.calibrations = calibrations;
        this.columns = columns;
        this.kernels = kernels;
    }

    /** The weights of all members and how well they fit. */
    record Weighed(List<Double> weights, List<Fit> fits) {}

    Weighed weigh(List<Candidate> candidates, List<Member> members) {
        double[] weights = members.stream().mapToDouble(Member::weight).toArray();
        List<Fit> fits = new ArrayList<>();
        for (int c = 0; c < candidates.size(); c++) {
            if (candidates.get(c).bodies().size() == 1) {
                weigh(candidates.get(c), own(members, c), weights, fits);
            }
        }
        return new Weighed(
                IntStream.range(0, weights.length).mapToObj(i -> weights[i]).toList(), fits);
    }

    private static int[] own(List<Member> members, int candidate) {
        return IntStream.range(0, members.size())
                .filter(m -> members.get(m).candidate() == candidate)
                .toArray();
    }

    private void weigh(Candidate candidate, int[] own, double[] weights, List<Fit> fits) {
        List<Calibration> used = new ArrayList<>();
        List<Raking.Wanted> wanted = new ArrayList<>();
        for (Calibration calibration : calibrations) {
            if (has(candidate.bodies().get(0), calibration.state())) {
                shows(calibration, own).ifPresent(shows -> {
                    used.add(calibration);
                    wanted.add(new Raking.Wanted(shows, calibration.sensitivity()));
                });
            }
        }
        double[] before = IntStream.of(own).mapToDouble(m -> weights[m]).toArray();
        double[] after = wanted.isEmpty() ? before : Raking.weights(before, wanted);
        for (int i = 0; i < own.length; i++) {
            weights[own[i]] = after[i];
        }
        for (int i = 0; i < used.size(); i++) {
            double got = Raking.share(after, wanted.get(i).shows());
            fits.add(new Fit(used.get(i).ratio(), candidate.id(), used.get(i).sensitivity(), got));
        }
    }

    static boolean has(Body body, State state) {
        return body.ailments().stream().filter(a -> !a.old()).anyMatch(a -> has(a, state));
    }

    private static boolean has(Ailment ailment, State state) {
        long sides = ailment.lesions().stream()
                .filter(lesion -> lesion.loss() >= HURT && lies(lesion.site(), state))
                .map(lesion -> lesion.site().side())
                .distinct()
                .count();
        return sides >= (state.both() ? 2 : 1)
                || ailment.shifts().entrySet().stream()
                        .anyMatch(shift -> shift.getValue() > 0
                                && Quantity.family(shift.getKey()).equals(state.quantity()));
    }

    private static boolean lies(Site site, State state) {
        return state.structures().contains(site.structure())
                && (state.part().isEmpty()
                        || site.level().filter(state.part()::equals).isPresent()
                        || site.segment()
                                .filter(s -> s.toString().equals(state.part()))
                                .isPresent());
    }

    /**
     * The chance that the sign is seen in each of these bodies, at the place where it hangs most on how far the illness has
     * gone; empty if no step reads it.
     */
    private Optional<double[]> shows(Calibration calibration, int[] own) {
        double[] best = new double[0];
        double widest = -1;
        for (Column column : columns) {
            if (reads(column, calibration.reads())) {
                double[] shows = chances(column, calibration.shows(), own);
                DoubleSummaryStatistics range = DoubleStream.of(shows).summaryStatistics();
                if (range.getMax() - range.getMin() > widest) {
                    widest = range.getMax() - range.getMin();
                    best = shows;
                }
            }
        }
        return widest < 0 ? Optional.empty() : Optional.of(best);
    }

    private boolean reads(Column column, String reads) {
        return examination
                .manoeuvre(column.item().manoeuvre())
                .map(m -> m.reads().equals(reads))
                .orElse(false);
    }

    private double[] chances(Column column, List<String> counted, int[] own) {
        List<Double> kernel = kernels.get(column.kernel());
        int size = column.outcomes().size();
        double[] chances = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            int there = column.shown(own[i]);
            for (int o = 0; o < size; o++) {
                if (counts(column.outcomes().get(o), counted)) {
                    chances[i] += kernel.get(there * size + o);
                }
            }
        }
        return chances;
    }

    /** One look at several places shows the sign when any of them does. */
    private static boolean counts(String outcome, List<String> counted) {
        return List.of(outcome.split("; ", -1)).stream().anyMatch(counted::contains);
    }
}

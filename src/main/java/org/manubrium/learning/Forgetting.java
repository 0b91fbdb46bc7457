package org.manubrium.learning;

import java.util.ArrayList;
import java.util.List;

/**
 * How likely it is that a fact is still known, after Pavlik and Anderson (Cognitive Science 2005;29:559): each time it was
 * met leaves a trace that decays as a power of time, m = ln Σ tᵢ^-dᵢ, the faster the better it was known when it was met
 * again, dᵢ = c·e^m + a, so that spaced meetings last longer than massed ones. It is known with probability
 * 1 / (1 + e^-((m-τ)/s)).
 *
 * <p>The authors' values come from pairs of words in two languages, and were taken from memory of the paper: the order of
 * facts is to be used, not the level. Time outside a session counts {@code outside} of its length; the first half hour after
 * a meeting counts in full, which is a simplification made here.
 *
 * @param a the decay of the first trace; {@code c} how much knowing it adds to the decay of the next
 * @param tau the threshold τ, and {@code s} the noise around it
 * @param outside the share of time outside a session that counts
 */
public record Forgetting(double a, double c, double tau, double s, double outside) {
    /** The authors' values. */
    public static final Forgetting USUAL = new Forgetting(0.177, 0.217, -0.704, 0.255, 0.025);

    private static final double SESSION_SECONDS = 1800;

    /** Times run backwards where a clock was set back; a trace is never younger than this. */
    private static final double YOUNGEST_SECONDS = 1;

    /**
     * The strength m of a fact.
     *
     * @param met when it was met, in seconds from any moment, in order; at least one
     * @param now in seconds from the same moment
     */
    public double strength(List<Double> met, double now) {
        return strength(met, decays(met), now);
    }

    /** The probability that it is known, 0..1. */
    public double recall(List<Double> met, double now) {
        return 1 / (1 + Math.exp(-(strength(met, now) - tau) / s));
    }

    /** The decay of each trace. */
    List<Double> decays(List<Double> met) {
        List<Double> decays = new ArrayList<>();
        for (double at : met) {
            double before = decays.isEmpty() ? Double.NEGATIVE_INFINITY : strength(met, decays, at);
            decays.add(c * Math.exp(before) + a);
        }
        return decays;
    }

    /** By as many traces as there are decays. */
    private double strength(List<Double> met, List<Double> decays, double now) {
        double sum = 0;
        for (int i = 0; i < decays.size(); i++) {
            sum += Math.pow(counted(now - met.get(i)), -decays.get(i));
        }
        return Math.log(sum);
    }

    private double counted(double seconds) {
        double inSession = Math.min(seconds, SESSION_SECONDS);
        return Math.max(YOUNGEST_SECONDS, inSession + outside * (seconds - inSession));
    }
}

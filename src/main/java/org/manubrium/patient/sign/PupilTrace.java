package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * Both pupils over time, in millimetres, every {@link #STEP_MS} milliseconds from the first spell on.
 *
 * <p>Each pupil follows its target by a first-order lag, dD/dt = (target(t - delay) - D) / tau, with a shorter tau while it
 * narrows. In a light that stays on, part of the narrowing is lost again (escape).
 */
record PupilTrace(List<Double> right, List<Double> left) {
    static final double STEP_MS = 50;
    private static final double SECONDS = 0.01;
    private static final int STEPS_A_SAMPLE = 5;

    /** The pupils through these spells, having rested in the light of {@code before}. */
    static PupilTrace run(Body body, Eyes eyes, Spell before, List<Spell> spells) {
        return new Run(body, eyes, before, spells).trace();
    }

    List<Double> of(Side eye) {
        return eye == Side.RIGHT ? right : left;
    }

    /** The size of one pupil so many seconds after the start. */
    double at(Side eye, double seconds) {
        int index = (int) Math.round(seconds * 1000 / STEP_MS);
        return of(eye).get(Math.min(index, right.size() - 1));
    }

    /** The least size of one pupil up to that moment. */
    double least(Side eye, double untilSeconds) {
        return of(eye).stream()
                .limit(Math.round(untilSeconds * 1000 / STEP_MS))
                .mapToDouble(d -> d)
                .min()
                .orElseThrow();
    }

    List<Appearance.Curve> curves() {
        return List.of(
                new Appearance.Curve("right", "mm", STEP_MS, right), new Appearance.Curve("left", "mm", STEP_MS, left));
    }

    /** One run of the simulation. */
    private static final class Run {
        private final Eyes eyes;
        private final Spell before;
        private final List<Spell> spells;
        private final double lightDelay;
        private final double nearDelay;
        private final double escape;
        private final double escapeSeconds;
        private final double rested;
        private double adapted;
        private Spell lit;
        private double steady;

        Run(Body body, Eyes eyes, Spell before, List<Spell> spells) {
            Physiology numbers = body.physiology();
            this.eyes = eyes;
            this.before = before;
            this.spells = spells;
            double years = body.person().age() - numbers.constant("pupil.age");
            this.lightDelay = numbers.constant("pupil.latency") + years * numbers.constant("pupil.latency-per-year");
            this.nearDelay = numbers.constant("pupil.near-latency");
            this.escape = numbers.constant("pupil.escape");
            this.escapeSeconds = numbers.constant("pupil.escape-seconds");
            this.rested = eyes.healthy(before.right(), before.left());
            this.lit = before;
            this.steady = rested;
        }

        PupilTrace trace() {
            double rightNow = eyes.right().target(rested, 0);
            double leftNow = eyes.left().target(rested, 0);
            List<Double> right = new ArrayList<>();
            List<Double> left = new ArrayList<>();
            long steps = Math.round(spells.stream().mapToDouble(Spell::seconds).sum() / SECONDS);
            for (int i = 0; i < steps; i++) {
                if (i % STEPS_A_SAMPLE == 0) {
                    right.add(rounded(rightNow));
                    left.add(rounded(leftNow));
                }
                double healthy = healthy(i * SECONDS - lightDelay);
                boolean near = spell(i * SECONDS - nearDelay).near();
                double nearShare = near ? eyes.nearShare() : 0;
                rightNow = eyes.right().step(rightNow, eyes.right().target(healthy, nearShare), near, SECONDS);
                leftNow = eyes.left().step(leftNow, eyes.left().target(healthy, nearShare), near, SECONDS);
            }
            return new PupilTrace(List.copyOf(right), List.copyOf(left));
        }

        private double healthy(double time) {
            Spell spell = spell(time);
            if (!spell.equals(lit)) {
                lit = spell;
                steady = eyes.healthy(spell.right(), spell.left());
            }
            double narrowed = Math.max(0, rested - steady);
            adapted += (narrowed - adapted) * SECONDS / escapeSeconds;
            return steady + escape * Math.min(adapted, narrowed);
        }

        private Spell spell(double time) {
            double end = 0;
            Spell found = before;
            for (Spell spell : spells) {
                if (time < end) {
                    return found;
                }
                found = spell;
                end += spell.seconds();
            }
            return found;
        }

        private static double rounded(double millimetres) {
            return Math.round(millimetres * 1000) / 1000.0;
        }
    }
}

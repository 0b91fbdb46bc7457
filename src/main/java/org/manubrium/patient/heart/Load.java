package org.manubrium.patient.heart;

import org.manubrium.patient.Physiology;

/**
 * What the heart is given to do, as factors of what it is given at rest: filling of the left and of the right side,
 * resistance of the arteries, force of contraction, rate.
 */
public record Load(double left, double right, double resistance, double force, double rate) {
    public static final Load REST = new Load(1, 1, 1, 1, 1);

    /** What a tabled act gives: breath-in, valsalva, squatting, standing, grip, leg-raise. */
    public static Load of(Physiology numbers, String act) {
        String stem = "heart.load." + act + ".";
        return new Load(
                numbers.constant(stem + "left"),
                numbers.constant(stem + "right"),
                numbers.constant(stem + "resistance"),
                numbers.constant(stem + "force"),
                numbers.constant(stem + "rate"));
    }

    /** This load on top of another. */
    public Load and(Load other) {
        return new Load(
                left * other.left,
                right * other.right,
                resistance * other.resistance,
                force * other.force,
                rate * other.rate);
    }

    /** So much of this load, 0..1; none of it is rest. */
    public Load share(double share) {
        return new Load(
                1 + (left - 1) * share,
                1 + (right - 1) * share,
                1 + (resistance - 1) * share,
                1 + (force - 1) * share,
                1 + (rate - 1) * share);
    }

    /** How large the left ventricle is kept: more filling and resistance widen it, force empties it. */
    double size() {
        return left * Math.sqrt(resistance / force);
    }

    /** How high the arterial pressure is driven. */
    double pressure() {
        return Math.pow(resistance, 0.6) * Math.pow(left, 0.4);
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Person;
import org.manubrium.patient.Physiology;

/** The tabled numbers of one look: those of a sign's part for the word that is read, on one side. */
record LimbNumbers(Physiology physiology, Person person, String sign, String code, Side side) {
    /** So many seconds apart, what moves by itself is at no moment alike on both sides. */
    private static final double APART = 31;

    /** The amount tabled as limb.sign.word.key. */
    double of(String key) {
        String tabled = sign.equals("gait") ? GaitSigns.pattern(code) : code;
        return physiology.constant("limb." + sign + "." + tabled + "." + key);
    }

    /** A curve of so many samples, {@code stepMs} apart; the function takes seconds. */
    static Appearance.Curve curve(String name, String unit, double stepMs, int samples, DoubleUnaryOperator at) {
        List<Double> found = new ArrayList<>(samples);
        for (int i = 0; i < samples; i++) {
            found.add(Math.rint(at.applyAsDouble(i * stepMs / 1000) * 10) / 10 + 0.0);
        }
        return new Appearance.Curve(name, unit, stepMs, List.copyOf(found));
    }

    /** A smooth bump of height 1 around {@code middle}. */
    static double bump(double x, double middle, double width) {
        double off = (x - middle) / width;
        return Math.exp(-off * off);
    }

    /** An uneven number between -1 and 1 of this side's own: the two sides do not move as one. */
    double ownUneven(double x) {
        return uneven(side == Side.LEFT ? x + APART : x);
    }

    /** An uneven number between -1 and 1, the same at every look. */
    static double uneven(double x) {
        return (Math.sin(x * 12.9898) + Math.sin(x * 4.1414 + 1.3) + Math.sin(x * 7.7 + 0.4)) / 3;
    }
}

package org.manubrium.appearance;

import java.util.List;

/**
 * What a probe showed.
 *
 * @param sign which drawing shows it: told by the manoeuvre alone, never by the patient
 * @param curves movements over time; how many and how long is told by the manoeuvre
 * @param measures amounts read off at once
 * @param words what the patient says or the hand feels; no word of the scale on which the sign is read
 */
public record Appearance(String sign, List<Curve> curves, List<Measure> measures, String words) {

    /** A quantity sampled every {@code stepMs} milliseconds from the stimulus on. */
    public record Curve(String name, String unit, double stepMs, List<Double> samples) {}

    /** One amount with its unit. */
    public record Measure(String label, double amount, String unit) {}
}

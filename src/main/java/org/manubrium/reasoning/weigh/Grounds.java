package org.manubrium.reasoning.weigh;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The tabled grounds on which cases are weighed.
 *
 * @param misread the chance that an examiner misreads a sign, 0..1, by what its scale grades or, measured, what it
 *     reads; blank for all others
 * @param decline by how much each level further off is less likely to be read than the one before, 0..1
 * @param other the chance, beforehand, that the patient has none of what the case names, 0..1
 * @param threshold how likely a diagnosis is likely enough, 0..1
 * @param risks cautions and kinds of intimacy that need a reason
 */
public record Grounds(
        Map<String, Double> misread,
        double decline,
        double other,
        double threshold,
        Set<String> risks,
        List<Calibration> calibrations) {
    public Grounds {
        misread = Map.copyOf(misread);
        risks = Set.copyOf(risks);
        calibrations = List.copyOf(calibrations);
    }

    /** The chance that an examiner misreads a sign of this kind. */
    double misread(String quantity) {
        return misread.getOrDefault(quantity, misread.getOrDefault("", 0.0));
    }
}

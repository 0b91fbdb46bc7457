package org.manubrium.patient.heart;

import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** What makes a sound louder or softer than in health, each with the quantities behind it. */
public record Causes(List<Cause> causes) {

    /** One cause: by how many dB, and from which quantities. */
    public record Cause(double decibel, Set<String> quantities) {
        static Cause of(double decibel, String... quantities) {
            return new Cause(decibel, Set.of(quantities));
        }
    }

    static Causes of(Cause... causes) {
        return new Causes(List.of(causes));
    }

    public double sum() {
        return causes.stream().mapToDouble(Cause::decibel).sum();
    }

    /** The quantities behind what moves the sound most in the way in which it is moved. */
    public Set<String> main() {
        double way = Math.signum(sum());
        return causes.stream()
                .filter(cause -> cause.decibel() * way > 0)
                .max(Comparator.comparingDouble(cause -> cause.decibel() * way))
                .map(Cause::quantities)
                .orElse(Set.of());
    }
}

package org.manubrium.marking.key;

import java.util.List;
import java.util.Optional;

/** What an item truly reads. */
public sealed interface ReadingKey {

    /** A level, on every scale of the quantity. */
    record Graded(List<ScaleKey> scales) implements ReadingKey {
        public Graded {
            scales = List.copyOf(scales);
        }

        public Optional<ScaleKey> on(String scale) {
            return scales.stream().filter(s -> s.scale().equals(scale)).findFirst();
        }
    }

    /** A number; {@code tolerance} is how far off still earns full credit, in {@code unit}. */
    record Measured(double value, String unit, double tolerance) implements ReadingKey {}

    /** One of a set of words; {@code normal} are those that healthy people show. */
    record Chosen(String code, List<String> codes, List<String> normal) implements ReadingKey {
        public Chosen {
            codes = List.copyOf(codes);
            normal = List.copyOf(normal);
        }
    }

    /**
     * One scale with the right level on it.
     *
     * @param codes lowest first, if the scale has an order
     * @param normal the levels that healthy people of this age and sex show
     */
    record ScaleKey(String scale, String name, boolean ordered, List<String> codes, List<String> normal, String right) {
        public ScaleKey {
            codes = List.copyOf(codes);
            normal = List.copyOf(normal);
        }
    }
}

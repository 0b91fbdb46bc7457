package org.manubrium.anatomy;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The spinal segments from the head down, C1 to S5. */
@SuppressWarnings("EnumOrdinal") // the order of the constants is the order in the body, and nothing else
public enum Segment {
    C1,
    C2,
    C3,
    C4,
    C5,
    C6,
    C7,
    C8,
    T1,
    T2,
    T3,
    T4,
    T5,
    T6,
    T7,
    T8,
    T9,
    T10,
    T11,
    T12,
    L1,
    L2,
    L3,
    L4,
    L5,
    S1,
    S2,
    S3,
    S4,
    S5;

    private static final List<Segment> ALL = List.of(values());

    public static List<Segment> all() {
        return ALL;
    }

    public static Optional<Segment> of(String text) {
        String name = text.toUpperCase(Locale.ROOT);
        return Arrays.stream(values()).filter(s -> s.name().equals(name)).findFirst();
    }

    /** The segment {@code steps} further down, negative for up; empty beyond C1 or S5. */
    public Optional<Segment> down(int steps) {
        int at = ordinal() + steps;
        return at < 0 || at >= ALL.size() ? Optional.empty() : Optional.of(ALL.get(at));
    }

    /** From this segment down to {@code last}, both included; empty when {@code last} lies above. */
    public List<Segment> to(Segment last) {
        return last.ordinal() < ordinal() ? List.of() : ALL.subList(ordinal(), last.ordinal() + 1);
    }
}

package org.manubrium.patient;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How much melanin a person's skin holds: it darkens the skin, and so hides what the blood below it would show. */
public enum SkinTone {
    LIGHT(0.12),
    BROWN(0.5),
    DARK(1);

    private final double melanin;

    SkinTone(double melanin) {
        this.melanin = melanin;
    }

    /** As a share of the darkest skin, 0..1. */
    public double melanin() {
        return melanin;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<SkinTone> of(String word) {
        return Stream.of(values()).filter(tone -> tone.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Stream.of(values()).map(SkinTone::word).toList();
    }
}

package org.manubrium.patient;

import java.util.Locale;
import java.util.Optional;

/** The sex a case file gives. */
public enum Sex {
    FEMALE,
    MALE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Sex> of(String word) {
        for (Sex sex : values()) {
            if (sex.word().equals(word)) {
                return Optional.of(sex);
            }
        }
        return Optional.empty();
    }
}

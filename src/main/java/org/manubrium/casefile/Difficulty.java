package org.manubrium.casefile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How hard its author thinks a case. */
public enum Difficulty {
    EASY,
    MIDDLING,
    HARD;

    /** The word in files and on pages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Difficulty> of(String word) {
        return Arrays.stream(values())
                .filter(difficulty -> difficulty.word().equals(word))
                .findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Difficulty::word).toList();
    }
}

package org.manubrium.patient;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How much flesh a person carries in health; what that changes is tabled. */
public enum Build {
    SLIGHT,
    AVERAGE,
    HEAVY;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Build> of(String word) {
        return Stream.of(values()).filter(build -> build.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Stream.of(values()).map(Build::word).toList();
    }
}

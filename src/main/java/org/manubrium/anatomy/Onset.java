package org.manubrium.anatomy;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How long ago a lesion came, in days; the words and the days are kept apart so that a file reads back as written. */
public record Onset(double days, String words) {
    private static final Map<String, Double> UNITS =
            Map.of("minute", 1.0 / 1440, "hour", 1.0 / 24, "day", 1.0, "week", 7.0, "month", 30.4, "year", 365.25);
    private static final Map<String, Double> ALONE = Map.of(
            "now", 0.0, "hours", 0.25, "acute", 0.25, "days", 3.0, "weeks", 42.0, "months", 120.0, "years", 1826.0,
            "old", 1826.0);

    /** Reads "6 weeks", "3 hours", "1 year", or one of now, hours, acute, days, weeks, months, years, old. */
    public static Optional<Onset> parse(String text) {
        String words = text.trim().toLowerCase(Locale.ROOT);
        Double alone = ALONE.get(words);
        if (alone != null) {
            return Optional.of(new Onset(alone, words));
        }
        String[] parts = words.split("\\s+", -1);
        if (parts.length != 2 || !parts[0].matches("\\d{1,5}(\\.\\d{1,3})?")) {
            return Optional.empty();
        }
        Double unit = UNITS.get(parts[1].endsWith("s") ? parts[1].substring(0, parts[1].length() - 1) : parts[1]);
        return unit == null ? Optional.empty() : Optional.of(new Onset(Double.parseDouble(parts[0]) * unit, words));
    }

    @Override
    public String toString() {
        return words;
    }
}

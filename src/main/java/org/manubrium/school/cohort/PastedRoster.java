package org.manubrium.school.cohort;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A list of names as pasted, one a line; blank lines are passed over.
 *
 * @param problems what keeps the list from being taken, in the order of its lines
 */
public record PastedRoster(List<String> names, List<Problem> problems) {
    static final int LONGEST_NAME = 100;
    static final int MOST_NAMES = 500;

    /** One line that will not do; {@code line} counts from 1. */
    public record Problem(int line, String text, String what) {}

    public PastedRoster {
        names = List.copyOf(names);
        problems = List.copyOf(problems);
    }

    /** @param enrolled the names that are in the cohort already */
    static PastedRoster read(String text, List<String> enrolled) {
        Map<String, String> seen = new HashMap<>();
        enrolled.forEach(name -> seen.put(folded(name), "This name is in the cohort already."));
        List<String> names = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String name = lines[i].strip().replaceAll("[ \\t\\u00a0]+", " ");
            if (!name.isEmpty()) {
                int line = i + 1;
                fault(name, seen).ifPresent(what -> problems.add(new Problem(line, shortened(name), what)));
                seen.putIfAbsent(folded(name), "This name is on line " + line + " too.");
                names.add(name);
            }
        }
        if (names.size() > MOST_NAMES) {
            problems.add(new Problem(lines.length, "", "Paste at most " + MOST_NAMES + " names at once."));
        }
        return new PastedRoster(names, problems);
    }

    private static Optional<String> fault(String name, Map<String, String> seen) {
        if (name.length() > LONGEST_NAME) {
            return Optional.of("A name may have at most " + LONGEST_NAME + " characters.");
        }
        if (name.chars().anyMatch(Character::isISOControl)) {
            return Optional.of("There is a character in it that is not text.");
        }
        if (name.codePoints().noneMatch(Character::isLetter)) {
            return Optional.of("There is no letter in it.");
        }
        return Optional.ofNullable(seen.get(folded(name)))
                .map(what -> what + " Add something that tells the two apart, such as a middle initial.");
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "…";
    }
}

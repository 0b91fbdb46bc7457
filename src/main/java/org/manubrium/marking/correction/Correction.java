package org.manubrium.marking.correction;

import java.util.Arrays;
import java.util.List;

/**
 * What shall stand in the key at one line of the mark sheet.
 *
 * @param line the line's id on the mark sheet, as "roots/triceps-reflex" or "conclusion/next"
 * @param conventions the teaching conventions it holds under; of no matter where a line does not depend on them
 * @param to what is right; alternatives separated by " or " or "|"
 */
public record Correction(String line, List<String> conventions, String to) {
    public Correction {
        conventions = List.copyOf(conventions);
    }

    /** What comes before the first slash: essential, reading, normal, means, site, roots or conclusion. */
    String kind() {
        return line.substring(0, Math.max(0, line.indexOf('/')));
    }

    /** What comes after it. */
    String about() {
        return line.substring(line.indexOf('/') + 1);
    }

    boolean holdsUnder(String convention) {
        return conventions.contains(convention);
    }

    List<String> alternatives() {
        return Arrays.stream(to.split("\\bor\\b|\\|", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}

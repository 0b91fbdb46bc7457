package org.manubrium.school.mark;

import java.util.List;
import java.util.Optional;

/**
 * A fact behind a set case's marks whose text nobody here has opened.
 *
 * @param row names the table's row as keys do; blank in a key from before rows were named
 * @param kind manoeuvre, scale, condition, meaning, convention or roots in print
 * @param says what the row says; blank where the row has changed since the key was made
 * @param sources ids of its sources
 * @param marks what is asked of the student that stands on it
 */
public record UncheckedFact(
        String row,
        String kind,
        String name,
        String says,
        String sources,
        List<String> marks,
        Optional<FactConfirmed> confirmed) {
    public UncheckedFact {
        marks = List.copyOf(marks);
    }

    /** Whether it can be confirmed: it has a name, and nobody has. */
    public boolean open() {
        return confirmed.isEmpty() && !row.isEmpty();
    }
}

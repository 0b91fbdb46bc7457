package org.manubrium.marking;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.manubrium.marking.key.Origin;

/**
 * How far what nobody here has opened may be relied on.
 *
 * @param station whether a line scores only if every such row behind it is confirmed
 * @param confirmed the rows that educators have confirmed, as their origins name them
 */
public record Checked(boolean station, Set<String> confirmed) {
    /** As in practice, where nothing has been confirmed: everything scores. */
    public static final Checked PRACTICE = new Checked(false, Set.of());

    public Checked {
        confirmed = Set.copyOf(confirmed);
    }

    /** What a line stands on that rests on these rows. */
    Standing standing(Collection<Origin> rows) {
        List<Origin> unchecked = rows.stream()
                .filter(Origin::unverified)
                .filter(row -> row.row().isEmpty() || !confirmed.contains(row.row()))
                .distinct()
                .toList();
        return new Standing(unchecked, !station || unchecked.isEmpty());
    }
}

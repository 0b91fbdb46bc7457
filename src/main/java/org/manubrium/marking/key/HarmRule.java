package org.manubrium.marking.key;

import java.util.List;

/**
 * Something to be asked before something is done.
 *
 * @param before "touch" for the first manoeuvre, "intimate" for an intimate one, "move" for bringing the patient into one
 *     of {@code positions}, "way" for a manoeuvre done in one of them, written variant=choice
 * @param question the id of what must have been asked; blank where no question makes it right
 * @param text what is said when it was not
 */
public record HarmRule(String id, String before, List<String> positions, String question, String text, Origin origin) {
    public HarmRule {
        positions = List.copyOf(positions);
    }
}

package org.manubrium.marking.key;

import java.util.List;

/**
 * What an item means in this patient.
 *
 * @param term the term that earns full credit, blank if no meaning is asked for; {@code related} are terms that earn half
 */
public record MeansKey(String term, String text, List<String> related, Origin origin) {
    public MeansKey {
        related = List.copyOf(related);
    }
}

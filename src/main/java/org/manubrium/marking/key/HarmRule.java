package org.manubrium.marking.key;

import java.util.List;

/**
 * Something that could do harm as it was done.
 *
 * @param before what it is about: "touch" any manoeuvre; "intimate" an intimate one; "handle" one of {@code manoeuvres};
 *     "choice" one of those with one of {@code choices} of technique; "move" bringing the patient into one of
 *     {@code positions}; "way" any done in a way written variant=choice in
 *     {@code positions}; "unsafe" one of the manoeuvres in a patient for whom it is not safe; "symptoms" examining on in one
 *     of the positions after one of the manoeuvres made the patient say that something is wrong
 * @param caution the caution that stands beside the manoeuvres it is about; blank if it is about none in particular
 * @param manoeuvres those of this patient; found when a key is compiled
 * @param question the id of what must have been asked or done first; blank if nothing makes it safe
 * @param text what is said when it was not
 */
public record HarmRule(
        String id,
        String before,
        String caution,
        List<String> manoeuvres,
        List<String> positions,
        List<String> choices,
        String question,
        String text,
        Origin origin) {
    public HarmRule {
        manoeuvres = List.copyOf(manoeuvres);
        positions = List.copyOf(positions);
        choices = List.copyOf(choices);
    }

    /** One about any manoeuvre, any intimate one, or a move: a question must have been asked. */
    public static HarmRule asked(
            String id, String before, List<String> positions, String question, String text, Origin origin) {
        return new HarmRule(id, before, "", List.of(), positions, List.of(), question, text, origin);
    }

    /** The same about these manoeuvres. */
    public HarmRule about(List<String> others) {
        return new HarmRule(id, before, caution, others, positions, choices, question, text, origin);
    }
}

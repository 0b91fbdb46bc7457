package org.manubrium.examination;

import java.util.List;

/** A way in which a manoeuvre can be varied, such as reinforcement; the first choice is what is done unless said. */
public record Variant(String id, String name, List<Choice> choices) {

    /** One choice; {@code note} says how it is done. */
    public record Choice(String id, String name, String note, String source, String confidence) {}
}

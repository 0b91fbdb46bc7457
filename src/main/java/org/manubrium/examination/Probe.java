package org.manubrium.examination;

import java.util.Map;

/** A manoeuvre as it was done: on what, in which position, with which technique. */
public record Probe(Item item, String position, Map<String, String> technique) {
    /** The choice made of a variant, or {@code usual} if none was made. */
    public String choice(String variant, String usual) {
        return technique.getOrDefault(variant, usual);
    }
}

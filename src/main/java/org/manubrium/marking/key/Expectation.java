package org.manubrium.marking.key;

import java.util.List;

/**
 * What a diagnosis would change, by the body model; asked of the student before examining.
 *
 * @param diagnosis its id, and {@code name} as it is said of this patient
 * @param signs every manoeuvre that it makes abnormal
 */
public record Expectation(String diagnosis, String name, List<Expected> signs) {
    public Expectation {
        signs = List.copyOf(signs);
    }

    /** A manoeuvre by id and name. */
    public record Expected(String manoeuvre, String name) {}

    public boolean expects(String manoeuvre) {
        return signs.stream().anyMatch(sign -> sign.manoeuvre().equals(manoeuvre));
    }
}

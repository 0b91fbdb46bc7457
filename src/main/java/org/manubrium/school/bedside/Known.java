package org.manubrium.school.bedside;

import java.util.List;

/**
 * What the student knows of the patient before touching them; {@code vignette} in Markdown.
 *
 * @param expect whether the student is asked beforehand what to expect
 */
public record Known(
        String title, String name, int age, String sex, String vignette, List<Noted> observations, boolean expect) {

    /** One observation, such as a pulse taken by a nurse. */
    public record Noted(String label, String text) {}
}

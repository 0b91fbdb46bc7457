package org.manubrium.school.bedside;

import java.util.List;

/** What the student knows of the patient before touching them; {@code vignette} in Markdown. */
public record Known(String title, String name, int age, String sex, String vignette, List<Noted> observations) {

    /** One observation, such as a pulse taken by a nurse. */
    public record Noted(String label, String text) {}
}

package org.manubrium.patient;

import java.util.List;

/**
 * A named list of what a disease takes: sites with their loss, and quantities with their shift. Knows no sign.
 *
 * @param sided whether it is said with a side
 * @param levels the segments or named levels it may be said with, the usual one first; empty if it has none
 * @param onset how long ago it usually began
 * @param old whether it is a leftover that explains nothing new
 * @param prior how common it is among the patients an educator would set, a relative weight
 * @param history what such a patient may tell
 * @param leastSeverity 0..1; what is there whole or not at all has no slight form
 */
public record Condition(
        String id,
        String name,
        boolean sided,
        List<String> levels,
        String onset,
        boolean old,
        double prior,
        String history,
        double leastSeverity,
        List<Effect> effects,
        String source,
        String confidence) {

    /**
     * One thing a condition takes.
     *
     * @param site a site in words, with "@side" and "@level" to be filled in; blank for a quantity
     * @param quantity the id of a quantity or of a whole with parts, to be filled in likewise; blank for a site
     * @param amount the loss, or the shift, at full severity
     */
    public record Effect(String site, String quantity, double amount, String source, String confidence) {}
}

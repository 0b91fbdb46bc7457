package org.manubrium.reasoning;

import java.util.List;
import org.manubrium.examination.Item;

/**
 * One step of the examination, and what it shows in each body.
 *
 * @param item what is examined; its place is blank where one look shows all places
 * @param label how the step is said
 * @param seconds the tabled time it takes
 * @param positions where it can be done, the usual one first
 * @param sign steps with the same word read the same sign off the same pathway: an examiner who misreads one misreads the
 *     other alike
 * @param outcomes what can be seen, lowest first where they have an order
 * @param found the place in the outcomes of what the patient shows
 * @param shown one character for each body: its outcome's place, counted from {@link #ZERO}
 * @param kernel the number of the table of misreadings
 */
public record Column(
        Item item,
        String label,
        int seconds,
        List<String> positions,
        String sign,
        List<String> outcomes,
        int found,
        String shown,
        int kernel) {
    static final char ZERO = '0';

    public Column {
        positions = List.copyOf(positions);
        outcomes = List.copyOf(outcomes);
    }

    /** The places of the bodies' outcomes as characters. */
    public static String packed(int[] truths) {
        StringBuilder packed = new StringBuilder(truths.length);
        for (int truth : truths) {
            packed.append((char) (ZERO + truth));
        }
        return packed.toString();
    }

    /** The place of what this body shows. */
    public int shown(int body) {
        return shown.charAt(body) - ZERO;
    }

    /** Whether a probe of this item is this step. */
    public boolean reads(Item probed) {
        return item.equals(probed)
                || (item.place().isEmpty()
                        && item.manoeuvre().equals(probed.manoeuvre())
                        && item.side() == probed.side());
    }
}

package org.manubrium.casefile;

import java.util.Optional;
import org.manubrium.examination.Item;

/**
 * A manoeuvre that the author adds to the essential ones, or takes from them, and why; both
 * sides are one.
 *
 * @param place every place if empty
 */
public record KeyChange(String manoeuvre, Optional<String> place, String because) {
    public boolean touches(Item item) {
        return manoeuvre.equals(item.manoeuvre())
                && place.map(p -> p.equals(item.place())).orElse(true);
    }
}

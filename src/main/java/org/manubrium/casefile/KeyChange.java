package org.manubrium.casefile;

import java.util.Optional;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;

/**
 * A manoeuvre that the author adds to the essential ones, or takes from them, and why.
 *
 * @param side both sides if empty
 * @param place every place if empty
 */
public record KeyChange(String manoeuvre, Optional<Side> side, Optional<String> place, String because) {
    public boolean touches(Item item) {
        return manoeuvre.equals(item.manoeuvre())
                && side.map(s -> s == item.side()).orElse(true)
                && place.map(p -> p.equals(item.place())).orElse(true);
    }
}

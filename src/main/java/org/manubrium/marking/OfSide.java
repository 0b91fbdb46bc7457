package org.manubrium.marking;

import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;

/** A manoeuvre on one side, whatever the place. */
record OfSide(String manoeuvre, Side side) {
    static OfSide of(Item item) {
        return new OfSide(item.manoeuvre(), item.side());
    }
}

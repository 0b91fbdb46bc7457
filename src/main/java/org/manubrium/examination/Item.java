package org.manubrium.examination;

import org.manubrium.anatomy.Side;

/** What one reading is about. {@code place} is blank when the manoeuvre has only one. */
public record Item(String manoeuvre, Side side, String place) {
    public Item mirrored() {
        return new Item(manoeuvre, side.opposite(), place);
    }

    @Override
    public String toString() {
        return manoeuvre + (side == Side.NONE ? "" : ":" + side.word()) + (place.isEmpty() ? "" : "@" + place);
    }
}

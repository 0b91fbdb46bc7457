package org.manubrium.anatomy;

import java.util.List;

/** A side told from another: the same, the opposite, both, or the midline. */
public enum Relation {
    SAME,
    OPPOSITE,
    BOTH,
    NONE;

    public List<Side> from(Side side) {
        return switch (this) {
            case SAME -> List.of(side);
            case OPPOSITE -> List.of(side.opposite());
            case BOTH -> List.of(Side.RIGHT, Side.LEFT);
            case NONE -> List.of(Side.NONE);
        };
    }
}

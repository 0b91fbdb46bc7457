package org.manubrium.anatomy;

import java.util.Locale;
import java.util.Optional;

/** A side of the body, in the order in which sides are always shown; {@link #NONE} for what lies in the midline. */
public enum Side {
    RIGHT,
    LEFT,
    NONE;

    private final String word = name().toLowerCase(Locale.ROOT);

    public Side opposite() {
        return switch (this) {
            case RIGHT -> LEFT;
            case LEFT -> RIGHT;
            case NONE -> NONE;
        };
    }

    /** The word on pages and in files: right, left or none. */
    public String word() {
        return word;
    }

    public static Optional<Side> of(String word) {
        for (Side side : values()) {
            if (side.word().equals(word)) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }
}

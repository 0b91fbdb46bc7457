package org.manubrium.web.cohort;

import org.manubrium.store.SetCase;

/** How a set case is sat, as a word on a page. */
final class ModeWord {
    private ModeWord() {}

    static String of(SetCase.Mode mode) {
        return switch (mode) {
            case PRACTICE -> "practice";
            case STATION -> "station";
        };
    }
}

package org.manubrium.marking;

import java.util.List;
import org.manubrium.marking.key.Origin;

/**
 * What a line of the mark sheet stands on.
 *
 * @param unchecked the rows behind it whose text nobody here has opened and no educator has confirmed
 * @param scored whether it scores: in a station not before all of these are confirmed
 */
public record Standing(List<Origin> unchecked, boolean scored) {
    public Standing {
        unchecked = List.copyOf(unchecked);
    }

    /** One that scores, whatever it stands on. */
    public static Standing of(List<Origin> behind) {
        return new Standing(behind.stream().filter(Origin::unverified).toList(), true);
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * A place that is looked at: what can be seen there, the most telling first.
 *
 * @param sign the drawing that shows it
 * @param usual what is read where nothing is plain
 */
record Look(String sign, String usual, List<Feature> features, Paths paths) {

    /** The pathways on which what is seen depends. */
    interface Paths {
        List<Strand> of(Body body, Side side);
    }

    Look(String sign, String usual, List<Feature> features) {
        this(sign, usual, features, (body, side) -> List.of());
    }

    /** The level of the scale that is read. */
    String read(Body body, Side side) {
        for (Feature feature : features) {
            if (feature.plain(body, side)) {
                return feature.code().orElseThrow().level();
            }
        }
        return usual;
    }

    /** Everything that can be seen there; nothing that lies behind what hides it. */
    Appearance show(Body body, Side side) {
        List<Appearance.Measure> seen = new ArrayList<>();
        boolean hidden = false;
        for (Feature feature : features) {
            seen.add(feature.shown(body, side, hidden));
            hidden |= feature.hides() && feature.plain(body, side);
        }
        seen.addAll(Complexion.of(body));
        return new Appearance(sign, List.of(), List.copyOf(seen), "");
    }
}

package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.Feature.drawn;
import static org.manubrium.patient.sign.Feature.read;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** The canal of the ear and its drum. */
final class DrumLooks {
    private static final double PERCENT = 100;

    private DrumLooks() {}

    static Map<String, Look> all() {
        return Map.of(
                "drum",
                new Look(
                        "drum",
                        "normal",
                        List.of(
                                read("canal filled", "%", PERCENT, of("wax"), "wax", "drum.wax-hides")
                                        .hiding(),
                                read("gap in the drum", "%", PERCENT, of("hole"), "hole", "drum.seen.hole"),
                                read("redness", "%", PERCENT, of("red"), "red", "drum.seen.red"),
                                read("space behind filled", "%", PERCENT, of("fluid"), "fluid", "drum.seen.fluid"),
                                read("white patches", "%", PERCENT, of("chalk"), "chalk", "drum.seen.chalk"),
                                drawn("stands out by", "mm", 1, of("bulge")),
                                drawn("light reflected along", "mm", 1, DrumLooks::reflex))));
    }

    private static Feature.Tabled of(String kind) {
        return new Feature.Tabled("ear", kind);
    }

    /** The cone of light goes as the drum is opened, dulled or moved. */
    private static double reflex(Body body, Side ear) {
        double dulled = Math.max(of("red").of(body, ear), of("fluid").of(body, ear));
        double moved = Math.min(1, Math.abs(of("bulge").of(body, ear)));
        double kept = (1 - dulled) * (1 - moved) * (1 - of("hole").of(body, ear));
        return body.physiology().constant("drum.reflex") * kept;
    }
}

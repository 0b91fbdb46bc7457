package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** How much light a person's skin and irises send back, in per cent: whoever draws a face needs it, and no sign does. */
final class Complexion {
    private Complexion() {}

    static List<Appearance.Measure> of(Body body) {
        return List.of(reflects(body, "skin"), reflects(body, "iris"));
    }

    private static Appearance.Measure reflects(Body body, String what) {
        double usual = body.physiology().constant("complexion." + what);
        double spread = body.physiology().constant("complexion." + what + "-spread");
        double own = body.person().variation().of("complexion-" + what);
        return new Appearance.Measure(what + " reflects", Math.rint(usual + spread * own), "%");
    }
}

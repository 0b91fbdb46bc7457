package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** How much light a person's skin and irises send back, in per cent: whoever draws a face needs it, and no sign does. */
final class Complexion {
    private Complexion() {}

    static List<Appearance.Measure> of(Body body) {
        double skin = body.person().variation().of("complexion-skin");
        double iris = body.person().variation().of("complexion-iris");
        return List.of(reflects(body, "skin", (1 + skin) / 2), reflects(body, "iris", (1 + iris) / 2 * (1 + skin) / 2));
    }

    /** Light irises are found with light skin. */
    private static Appearance.Measure reflects(Body body, String what, double share) {
        double least = body.physiology().constant("complexion." + what);
        double range = body.physiology().constant("complexion." + what + "-range");
        return new Appearance.Measure(what + " reflects", Math.rint(least + range * share), "%");
    }
}

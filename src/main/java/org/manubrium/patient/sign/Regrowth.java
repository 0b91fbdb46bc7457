package org.manubrium.patient.sign;

import java.util.Set;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Body;

/**
 * What time does to an iris whose ciliary nerve was lost: fibres grow back to the wrong muscle, and later the pupil
 * becomes small. Both are shares, 0..1.
 */
record Regrowth(double grown, double shrunk) {

    static Regrowth of(Body body, Pathway ciliary) {
        Set<Site> passed = ciliary.sites();
        double days = body.ailments().stream()
                .flatMap(ailment -> ailment.lesions().stream())
                .filter(lesion -> lesion.loss() > 0 && passed.stream().anyMatch(lesion.site()::covers))
                .mapToDouble(Regrowth::age)
                .max()
                .orElse(0);
        return new Regrowth(
                Math.min(1, days / body.physiology().constant("pupil.regrowth-days")),
                Math.min(1, days / body.physiology().constant("pupil.shrinking-days")));
    }

    private static double age(Lesion lesion) {
        return lesion.onset().days();
    }
}

package org.manubrium.casefile;

import org.manubrium.anatomy.Onset;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Conditions;

/**
 * A lesion as it is said of one patient.
 *
 * @param site as a clinician says it
 * @param loss 0 to 1
 * @param old whether it is an old leftover that explains nothing new
 */
public record LesionUse(String site, double loss, Onset onset, boolean old) {
    /** The same with everything lost there. */
    LesionUse atFull() {
        return new LesionUse(site, 1, onset, old);
    }

    public Ailment ailment(Conditions conditions) {
        return conditions.lesion(site, loss, onset, old);
    }
}

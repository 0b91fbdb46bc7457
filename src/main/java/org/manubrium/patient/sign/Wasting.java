package org.manubrium.patient.sign;

import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;

/** What a muscle shows of a nerve that was lost long enough ago. */
final class Wasting {
    private Wasting() {}

    /** The share of a nerve's path that lesions of at least so many days have taken. */
    static double lost(Body body, Pathway nerve, double days) {
        return 1 - nerve.conduction(site -> kept(body, site, days));
    }

    private static double kept(Body body, Site site, double days) {
        double kept = 1;
        for (Ailment ailment : body.ailments()) {
            for (Lesion lesion : ailment.lesions()) {
                if (lesion.onset().days() >= days && lesion.site().covers(site)) {
                    kept *= 1 - lesion.loss();
                }
            }
        }
        return kept;
    }
}

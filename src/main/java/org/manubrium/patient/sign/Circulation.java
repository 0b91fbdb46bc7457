package org.manubrium.patient.sign;

import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * Arterial pressure in millimetres of mercury and the rate of the heart in beats a minute, lying or so many minutes after
 * standing up.
 */
record Circulation(double systolic, double diastolic, double rate) {

    static Circulation lying(Body body) {
        Physiology n = body.physiology();
        double years = body.person().age() - n.constant("pressure.age");
        double late = Math.max(0, body.person().age() - n.constant("pressure.stiff-from"));
        double over = Math.max(0, body.quantity("thyroid-state"));
        double under = Math.max(0, -body.quantity("thyroid-state"));
        double lost = body.quantity("blood-loss");
        return new Circulation(
                body.quantity("systolic-lying")
                        + years * n.constant("pressure.systolic-per-year")
                        + over * n.constant("pressure.systolic.thyroid-over")
                        + lost * n.constant("pressure.systolic.lost"),
                body.quantity("diastolic-lying")
                        + (years - late) * n.constant("pressure.diastolic-per-year")
                        + late * n.constant("pressure.diastolic-per-late-year")
                        + under * n.constant("pressure.diastolic.thyroid-under"),
                body.quantity("heart-rate")
                        + over * n.constant("pulse.thyroid-over")
                        + under * n.constant("pulse.thyroid-under")
                        + lost * n.constant("pulse.lost"));
    }

    /** What standing does: blood sinks into the legs, and the vessels and the heart answer as far as their nerves reach. */
    static Circulation standing(Body body, double minutes) {
        Physiology n = body.physiology();
        Circulation lying = lying(body);
        double gain = body.quantity("autonomic-gain");
        double failed =
                (1 - gain) * Math.min(1, Line.read(n, "standing.failed", 2).value(minutes));
        double lost = body.quantity("blood-loss");
        double pressor = body.quantity("standing-pressor") + tension(n, lying);
        double own = body.person().variation().of("standing") * n.constant("standing.spread");
        return new Circulation(
                lying.systolic
                        + n.constant("standing.systolic")
                        + own
                        + pressor
                        + lost * n.constant("standing.systolic.lost") * (2 - gain)
                        + failed * n.constant("standing.systolic.failed"),
                lying.diastolic
                        + n.constant("standing.diastolic")
                        + pressor * n.constant("standing.diastolic.pressor")
                        + lost * n.constant("standing.diastolic.lost")
                        + failed * n.constant("standing.diastolic.failed"),
                lying.rate + gain * (n.constant("standing.rate") + lost * n.constant("standing.rate.lost")));
    }

    /** Sitting, a part of what standing does has been done already. */
    static Circulation sitting(Body body) {
        double share = body.physiology().constant("sitting.share");
        Circulation lying = lying(body);
        Circulation standing = standing(body, 1);
        return new Circulation(
                lying.systolic + share * (standing.systolic - lying.systolic),
                lying.diastolic + share * (standing.diastolic - lying.diastolic),
                lying.rate + share * (standing.rate - lying.rate));
    }

    /** The mean pressure of a resting pulse, as it is worked out from whole readings of the two. */
    double mean() {
        double low = Math.rint(diastolic);
        return low + (Math.rint(systolic) - low) / 3;
    }

    /** In high pressure the systolic rises a few points on standing. */
    private static double tension(Physiology n, Circulation lying) {
        double excess = Math.max(0, lying.systolic - n.constant("pressure.systolic.high"));
        return Math.min(n.constant("standing.tension-most"), excess * n.constant("standing.tension"));
    }
}

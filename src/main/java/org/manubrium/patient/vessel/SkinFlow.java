package org.manubrium.patient.vessel;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * Blood through the skin at the end of one limb.
 *
 * @param share of what flows there in a healthy person at rest in a warm room
 */
public record SkinFlow(Body body, double share, boolean hand) {

    public static SkinFlow hand(Body body, Side side) {
        double reaches = new Arteries(body, side).kept(Artery.RADIAL) * (1 - body.quantity("hand.spasm"));
        return new SkinFlow(body, floor(body, reaches * open(body)), true);
    }

    public static SkinFlow foot(Body body, Side side) {
        Arteries arteries = new Arteries(body, side);
        double reaches = Math.max(arteries.kept(Artery.POSTERIOR_TIBIAL), arteries.kept(Artery.ANTERIOR_TIBIAL));
        return new SkinFlow(body, floor(body, reaches * open(body)), false);
    }

    private static double floor(Body body, double share) {
        return Math.max(body.physiology().constant("flow.least"), share);
    }

    /** How far the vessels of the skin stand open: lost volume closes them, carbon dioxide and thyroid excess open them. */
    public static double open(Body body) {
        double tight = body.quantity("circulation.constriction")
                + constant(body, "flow.lost") * Math.max(0, body.quantity("blood-loss"))
                - constant(body, "flow.thyroid") * body.quantity("thyroid-state")
                - constant(body, "flow.carbon-dioxide")
                        * Math.max(
                                0, body.quantity("blood.carbon-dioxide") - constant(body, "flow.carbon-dioxide-from"));
        return 1 - Math.max(-constant(body, "flow.widest"), Math.min(constant(body, "flow.tightest"), tight));
    }

    /** The temperature of the skin, in °C: between that of the room and that of the core, as far as blood brings heat. */
    public double warmth() {
        double room = constant(body, "flow.room");
        double below = constant(body, hand ? "flow.hand-below-core" : "flow.foot-below-core");
        double warmed = body.quantity("core-temperature") - below - room;
        return room + warmed * Math.pow(share, constant(body, "flow.warms"));
    }

    /** The seconds in which colour is back after pressing it away. */
    public double refill() {
        double years = Math.max(0, body.person().age() - constant(body, "flow.refill-age"));
        double slow = constant(body, "flow.refill") + years * constant(body, "flow.refill-per-year");
        return Math.min(constant(body, "flow.refill-most"), slow * Math.pow(share, -constant(body, "flow.refills")));
    }

    private static double constant(Body body, String name) {
        return body.physiology().constant(name);
    }
}

package org.manubrium.patient.vessel;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * Water in the tissues of one leg. Pressure in the veins pushes it out, albumin holds it back, lymph carries it off; retained
 * water must be there to feed what the whole body loses. It sinks: the ankle swells first.
 *
 * <p>Known limit: how long the patient stood or lay is not followed.
 */
public record LegFluid(Body body, Side side) {

    /** Loose water at a place of the leg, as the depth in mm to which a thumb presses it away. */
    public double loose(String place) {
        return Math.max(0, general() + local() - constant("leg.sinks." + place));
    }

    /** Swelling that is held in firm tissue, in mm. */
    public double firm(String place) {
        double lymph = constant("leg.lymph") * body.quantity("lymph." + side.word() + ".leg.block");
        double mucin = constant("leg.mucin") * Math.max(0, -body.quantity("thyroid-state"));
        return Math.max(0, lymph + mucin - constant("leg.firm-sinks." + place));
    }

    /** The depth of the dent that a thumb leaves, in mm. */
    public double pit(String place) {
        return Math.min(constant("leg.pit-most"), loose(place) + constant("leg.firm-pits") * firm(place));
    }

    /** The seconds in which a dent fills again, all but a twentieth. */
    public double refills(String place) {
        return constant("leg.refill") * Math.pow(pit(place), constant("leg.refill-bends"));
    }

    /** The girth of the calf, in cm. */
    public double girth() {
        double built = body.quantity("leg.girth")
                + constant("leg.girth-per-index") * (body.quantity("body.mass-index") - constant("leg.index"));
        double shrunk = 1 - constant("leg.girth-wasted") * body.quantity("body.wasting");
        double unequal =
                constant("leg.girth-unequal") * body.person().variation().of("leg.girth", side);
        return built * shrunk + unequal + stowed() + constant("leg.girth-per-mm") * (loose("shin") + firm("shin"));
    }

    /** Blood and water held back in the muscles behind a clot, in cm of girth. */
    private double stowed() {
        String vein = "vein." + side.word() + ".";
        return constant("leg.girth-calf-block") * body.quantity(vein + "calf.block")
                + constant("leg.girth-thigh-block") * body.quantity(vein + "thigh.block");
    }

    /** What the whole body sheds, bounded by the water it has kept. */
    private double general() {
        double pushed = body.quantity("right-atrial-pressure") - constant("leg.atrial-usual");
        double held = constant("leg.oncotic") * (constant("leg.albumin-usual") - body.quantity("blood.albumin"));
        double shed = constant("leg.per-cm") * Math.max(0, pushed + held - constant("leg.margin"));
        return Math.min(shed, constant("leg.per-litre") * body.quantity("tissue.water"));
    }

    private double local() {
        String vein = "vein." + side.word() + ".";
        double pushed = constant("leg.calf-block") * body.quantity(vein + "calf.block")
                + constant("leg.thigh-block") * body.quantity(vein + "thigh.block")
                + constant("leg.cava-block") * body.quantity("lower-cava.block")
                + constant("leg.reflux") * body.quantity(vein + "deep.reflux");
        double leaks = constant("leg.leak") * body.quantity("leg." + side.word() + ".inflamed");
        return constant("leg.per-cm") * Math.max(0, pushed - constant("leg.local-margin")) + leaks;
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }
}

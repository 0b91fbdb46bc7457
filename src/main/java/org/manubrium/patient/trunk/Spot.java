package org.manubrium.patient.trunk;

import org.manubrium.anatomy.Side;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;

/**
 * One place of a body as it is examined.
 *
 * @param side the side examined; none for what lies in the midline
 * @param place the place of the manoeuvre; blank if it has only one
 */
public record Spot(Body body, Side side, String place) {
    public static Spot of(Body body, Probe probe) {
        return new Spot(body, probe.item().side(), probe.item().place());
    }

    /** The same place on the other side. */
    public Spot across() {
        return new Spot(body, side.opposite(), place);
    }

    /** An id with "@side" and "@place" filled in; the midline is called "middle". */
    public String named(String id) {
        return id.replace("@side", side == Side.NONE ? "middle" : side.word()).replace("@place", place);
    }

    /** What a quantity stands at, its id filled in as by {@link #named}. */
    public double of(String id) {
        return body.quantity(named(id));
    }

    public double constant(String name) {
        return body.physiology().constant(name);
    }

    /** A trait of this person on this side, -1..1. */
    public double own(String trait) {
        return body.person().variation().of(trait, side);
    }

    /** Years of age beyond 20. */
    public double aged() {
        return Math.max(0, body.person().age() - 20);
    }
}

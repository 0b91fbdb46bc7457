package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * Movement that is lost while it is attended to and comes back by itself. It is not willed, and no sign of it says that
 * anyone deceives.
 */
final class Attention {
    private Attention() {}

    /** The share of an arm's or leg's movement that is kept when the patient is asked for it, 0..1. */
    static double kept(Body body, String movement, Side side) {
        String id = quantity(body, movement, side);
        return id.isEmpty() ? 1 : 1 - body.quantity(id);
    }

    static Set<String> quantities(Body body, String movement, Side side) {
        String id = side == Side.NONE ? "" : quantity(body, movement, side);
        return id.isEmpty() ? Set.of() : Set.of(id);
    }

    private static String quantity(Body body, String movement, Side side) {
        String area = body.anatomy().movement(movement).area();
        return area.equals("arm") || area.equals("leg") ? limb(area, side) : "";
    }

    static String limb(String area, Side side) {
        return "attended." + side.word() + "." + area;
    }

    /** The one side, or both where a thing is done with both at once. */
    static List<Side> sides(Side side) {
        return side == Side.NONE ? List.of(Side.RIGHT, Side.LEFT) : List.of(side);
    }
}

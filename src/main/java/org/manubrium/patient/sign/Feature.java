package org.manubrium.patient.sign;

import java.util.List;
import java.util.Optional;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * One thing to be seen at a place that is looked at.
 *
 * @param label what is measured of it, in {@code unit}; {@code scale} turns the amount into that unit
 * @param code what is read where it is the first to be plain; empty if it is only seen beside others
 * @param hides whether nothing else can be seen where it is plain
 */
record Feature(String label, String unit, double scale, Amount amount, Optional<Code> code, boolean hides) {

    /** How much of it there is on one side of a body. */
    interface Amount {
        double of(Body body, Side side);

        /** The quantities it is read off; none if it follows from a pathway. */
        default List<String> quantities(Side side) {
            return List.of();
        }
    }

    /** A level of the manoeuvre's scale, and the constant that says from which amount on it is plain. */
    record Code(String level, String limit) {}

    /** A quantity of one side, "ear.right.wax", or of the whole body, "mouth.thrush". */
    record Tabled(String owner, String kind) implements Amount {
        @Override
        public double of(Body body, Side side) {
            return body.quantity(id(side));
        }

        @Override
        public List<String> quantities(Side side) {
            return List.of(id(side));
        }

        private String id(Side side) {
            return side == Side.NONE ? owner + "." + kind : owner + "." + side.word() + "." + kind;
        }
    }

    static Feature drawn(String label, String unit, double scale, Amount amount) {
        return new Feature(label, unit, scale, amount, Optional.empty(), false);
    }

    static Feature read(String label, String unit, double scale, Amount amount, String level, String limit) {
        return new Feature(label, unit, scale, amount, Optional.of(new Code(level, limit)), false);
    }

    /** The same, seen beside what is read. */
    Feature onlyDrawn() {
        return drawn(label, unit, scale, amount);
    }

    Feature hiding() {
        return new Feature(label, unit, scale, amount, code, true);
    }

    boolean plain(Body body, Side side) {
        return code.isPresent()
                && amount.of(body, side)
                        >= body.physiology().constant(code.orElseThrow().limit());
    }

    Appearance.Measure shown(Body body, Side side, boolean hidden) {
        double seen = hidden ? 0 : amount.of(body, side) * scale;
        return new Appearance.Measure(label, Math.round(seen * 10) / 10.0, unit);
    }
}

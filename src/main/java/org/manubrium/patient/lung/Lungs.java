package org.manubrium.patient.lung;

import static org.manubrium.patient.lung.LungQuantity.BLOCKED;
import static org.manubrium.patient.lung.LungQuantity.FLUID;
import static org.manubrium.patient.lung.LungQuantity.GAS;
import static org.manubrium.patient.lung.LungQuantity.GONE;
import static org.manubrium.patient.lung.LungQuantity.NARROW;
import static org.manubrium.patient.lung.LungQuantity.SHRUNK;
import static org.manubrium.patient.lung.LungQuantity.SOLID;
import static org.manubrium.patient.lung.LungQuantity.STIFF;
import static org.manubrium.patient.lung.LungQuantity.TRAPPED;
import static org.manubrium.patient.lung.LungQuantity.WET;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** Both lungs together: what the windpipe, the breathing and its effort answer to. */
public final class Lungs {
    private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

    private final Body body;

    public Lungs(Body body) {
        this.body = body;
    }

    /** The mean amount over the zones of one side, or of both for {@link Side#NONE}. */
    public double mean(Side side, LungQuantity quantity) {
        if (side == Side.NONE) {
            return (mean(Side.RIGHT, quantity) + mean(Side.LEFT, quantity)) / 2;
        }
        double sum = 0;
        for (Zone zone : Zone.values()) {
            sum += body.quantity(quantity.id(side, zone));
        }
        return sum / Zone.values().length;
    }

    /** How far the windpipe lies toward one side, mm; negative if away. Lost volume pulls, pressure and much fluid push. */
    public double windpipeToward(Side side) {
        return pulled(side) - pulled(side.opposite());
    }

    private double pulled(Side side) {
        double from = constant("trachea.fluid-from");
        double large = Math.max(0, mean(side, FLUID) - from) / (1 - from);
        double push = Math.max(body.quantity("lung." + side.word() + ".pressure"), large);
        return constant("trachea.pull") * mean(side, SHRUNK) - constant("trachea.push") * push;
    }

    /** Breaths a minute: what drives the centre, and more the less of the lungs exchanges gas. */
    public double rate() {
        double hunger = constant("breathing.lost-gain") * (1 - Math.exp(-constant("breathing.lost-bend") * lost()));
        double pressed = constant("breathing.pressure-gain") * pressure();
        double depressed = constant("breathing.depressed") * body.quantity("breathing.depression");
        return body.quantity("breathing.rate") + hunger + pressed - depressed;
    }

    /** The work of breathing that shows: 0 at ease, about 1 in severe distress. */
    public double effort() {
        return constant("effort.narrow") * mean(Side.NONE, NARROW)
                + constant("effort.lost") * lost()
                + constant("effort.upper") * body.quantity("airway.upper")
                + constant("effort.pressure") * pressure();
    }

    private double pressure() {
        return Math.max(body.quantity("lung.right.pressure"), body.quantity("lung.left.pressure"));
    }

    /** The share of both lungs that does not exchange gas, counting each zone alike. */
    double lost() {
        double lost = 0;
        for (Side side : SIDES) {
            for (Zone zone : Zone.values()) {
                lost += 1 - exchange(new LungZone(body, side, zone));
            }
        }
        return lost / (2 * Zone.values().length);
    }

    /** The weights are those of a lung that has had time to adapt where the change is usually slow. */
    private static double exchange(LungZone zone) {
        return (1 - zone.of(SOLID))
                * (1 - zone.of(FLUID))
                * (1 - zone.of(GAS))
                * (1 - 0.7 * zone.of(WET))
                * (1 - 0.6 * zone.of(BLOCKED))
                * (1 - 0.4 * zone.of(STIFF))
                * (1 - 0.25 * zone.of(NARROW))
                * (1 - 0.15 * zone.of(TRAPPED))
                * (1 - 0.1 * zone.of(GONE));
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }
}

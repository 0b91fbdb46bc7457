package org.manubrium.patient.lung;

import static org.manubrium.patient.lung.LungQuantity.BLOCKED;
import static org.manubrium.patient.lung.LungQuantity.FLUID;
import static org.manubrium.patient.lung.LungQuantity.GAS;
import static org.manubrium.patient.lung.LungQuantity.GONE;
import static org.manubrium.patient.lung.LungQuantity.SOLID;
import static org.manubrium.patient.lung.LungQuantity.STIFF;
import static org.manubrium.patient.lung.LungQuantity.TRAPPED;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * One zone of one side: how it rings when tapped and how it carries sound to the chest wall. All amounts are relative to
 * the average healthy zone, which has 1.
 */
public final class LungZone {
    private final Body body;
    private final Side side;
    private final Zone zone;

    public LungZone(Body body, Side side, Zone zone) {
        this.body = body;
        this.side = side;
        this.zone = zone;
    }

    /** The amount of one quantity here, 0..1. */
    public double of(LungQuantity quantity) {
        return body.quantity(quantity.id(side, zone));
    }

    /** How long and loud it rings when tapped: less over what is solid or wet, more over more air. */
    public double note() {
        double air = 1 + constant("lung.note.gas") * of(GAS) + constant("lung.note.trapped") * of(TRAPPED);
        double airless = constant("lung.note.solid") * Math.max(of(SOLID), of(GONE));
        double scarred = constant("lung.note.stiff") * of(STIFF);
        double fluid = constant("lung.note.fluid") * of(FLUID);
        return air * (1 - airless) * (1 - scarred) * (1 - fluid) * own("lung.note.spread");
    }

    /** How loud the voice is over it to the ear. */
    public double voice() {
        return carried() * through("lung.voice.fluid", "lung.voice.gas") * own("lung.voice.spread");
    }

    /** How strongly the voice trembles over it under the hand. */
    public double hum() {
        return carried() * through("lung.hum.fluid", "lung.hum.gas") * own("lung.voice.spread");
    }

    private double carried() {
        double solid = of(SOLID);
        double airy =
                (1 - constant("lung.voice.trapped") * of(TRAPPED)) * (1 + constant("lung.voice.stiff") * of(STIFF));
        return open() * ((1 - solid) * airy + solid * constant("lung.voice.solid")) * (1 - of(GONE));
    }

    /** How much of what comes down the airway gets past a block in it. */
    double open() {
        return 1 - constant("lung.blocked-mute") * of(BLOCKED);
    }

    /** How much sound passes the pleura, given what a full layer of fluid and of air holds back. */
    double through(String fluid, String gas) {
        return (1 - constant(fluid) * of(FLUID)) * (1 - constant(gas) * of(GAS));
    }

    /** Sound of the large airways that reaches the chest wall through solid lung. */
    double throughSolid() {
        return of(SOLID) * open() * through("lung.breath.fluid", "lung.breath.gas") * (1 - of(GONE));
    }

    private double own(String spread) {
        return 1 + constant(spread) * body.person().variation().of("chest-wall");
    }

    double constant(String name) {
        return body.physiology().constant(name);
    }
}

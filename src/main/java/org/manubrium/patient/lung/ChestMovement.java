package org.manubrium.patient.lung;

import static org.manubrium.patient.lung.LungQuantity.FLUID;
import static org.manubrium.patient.lung.LungQuantity.GAS;
import static org.manubrium.patient.lung.LungQuantity.GONE;
import static org.manubrium.patient.lung.LungQuantity.NARROW;
import static org.manubrium.patient.lung.LungQuantity.SHRUNK;
import static org.manubrium.patient.lung.LungQuantity.SOLID;
import static org.manubrium.patient.lung.LungQuantity.STIFF;
import static org.manubrium.patient.lung.LungQuantity.TRAPPED;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** How far the chest wall and the diaphragm move in a full breath, cm. */
public record ChestMovement(Body body) {
    /** What a thumb travels from the midline when the hands hold the upper or the lower chest. */
    public double thumb(Side side, boolean upper) {
        double moved = usual(upper) * own() * (free(side, upper) + free(side)) / 2;
        return rounded(moved * held(side, upper) * (1 - constant("chest.still.rigid") * body.quantity("chest.rigid")));
    }

    /** What a healthy thumb of this age travels on average. */
    public double usual(boolean upper) {
        double years = Math.max(0, body.person().age() - constant("chest.age-from"));
        return constant(upper ? "chest.thumb.upper" : "chest.thumb.lower") * (1 - years * constant("chest.age-loss"));
    }

    /** What a tape round the chest gains: as much as both thumbs part. */
    public double tape() {
        return rounded(thumb(Side.RIGHT, false) + thumb(Side.LEFT, false));
    }

    /** How far the lower edge of resonance travels between a full breath out and a full breath in. */
    public double diaphragm(Side side) {
        LungZone base = new LungZone(body, side, Zone.LOWER_BACK);
        double travel = constant("diaphragm.travel")
                + constant("diaphragm.spread") * body.person().variation().of("diaphragm");
        return rounded(travel
                * (1 - body.quantity("lung." + side.word() + ".diaphragm"))
                * (1 - constant("diaphragm.trapped") * base.of(TRAPPED))
                * (1 - constant("diaphragm.fluid") * base.of(FLUID))
                * (1 - constant("diaphragm.stiff") * base.of(STIFF))
                * (1 - constant("diaphragm.solid") * base.of(SOLID))
                * (1 - base.of(GONE)));
    }

    private double held(Side side, boolean upper) {
        double pain = 1 - constant("chest.still.pain") * body.quantity("lung." + side.word() + ".pain");
        double weak = constant("chest.still.diaphragm") * body.quantity("lung." + side.word() + ".diaphragm");
        return pain * (upper ? 1 : 1 - weak);
    }

    private double own() {
        return 1 + constant("chest.spread") * body.person().variation().of("chest-expansion");
    }

    private double free(Side side, boolean upper) {
        double sum = 0;
        int zones = 0;
        for (Zone zone : Zone.values()) {
            if (zone.upper() == upper) {
                sum += free(side, zone);
                zones++;
            }
        }
        return sum / zones;
    }

    private double free(Side side) {
        return (free(side, true) + free(side, false)) / 2;
    }

    private double free(Side side, Zone at) {
        LungZone zone = new LungZone(body, side, at);
        return (1 - constant("chest.still.solid") * zone.of(SOLID))
                * (1 - constant("chest.still.fluid") * zone.of(FLUID))
                * (1 - constant("chest.still.gas") * zone.of(GAS))
                * (1 - constant("chest.still.stiff") * zone.of(STIFF))
                * (1 - constant("chest.still.trapped") * zone.of(TRAPPED))
                * (1 - constant("chest.still.shrunk") * zone.of(SHRUNK))
                * (1 - constant("chest.still.gone") * zone.of(GONE))
                * (1 - constant("chest.still.narrow") * zone.of(NARROW));
    }

    private static double rounded(double cm) {
        return Math.rint(cm * 10) / 10;
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }
}

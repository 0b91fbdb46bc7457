package org.manubrium.patient.lung;

import static org.manubrium.patient.lung.LungQuantity.BLOCKED;
import static org.manubrium.patient.lung.LungQuantity.FLUID;
import static org.manubrium.patient.lung.LungQuantity.GAS;
import static org.manubrium.patient.lung.LungQuantity.GONE;
import static org.manubrium.patient.lung.LungQuantity.NARROW;
import static org.manubrium.patient.lung.LungQuantity.RUB;
import static org.manubrium.patient.lung.LungQuantity.SECRETION;
import static org.manubrium.patient.lung.LungQuantity.SOLID;
import static org.manubrium.patient.lung.LungQuantity.STIFF;
import static org.manubrium.patient.lung.LungQuantity.TRAPPED;
import static org.manubrium.patient.lung.LungQuantity.WET;

/** What is heard over one zone, each kind of sound by the code of its scale. */
public record LungSounds(LungZone zone) {

    /**
     * The breath itself. Air that moves in and out of the zone makes a soft sound; solid lung with an open airway brings the
     * hollow sound of the large airways instead; fluid and air in the pleura hold both back.
     */
    public String breath() {
        double solid = zone.of(SOLID);
        double soft = (1 - solid) * (1 - constant("lung.breath.trapped") * zone.of(TRAPPED)) * narrowed();
        double loudness = zone.open()
                * (soft + solid * constant("lung.breath.solid"))
                * zone.through("lung.breath.fluid", "lung.breath.gas")
                * (1 - zone.of(GONE));
        if (loudness < constant("lung.breath.absent")) {
            return "absent";
        }
        if (zone.throughSolid() >= constant("lung.breath.bronchial")) {
            return "bronchial";
        }
        boolean quiet = loudness < constant("lung.breath.reduced");
        boolean slow = zone.of(NARROW) >= constant("lung.breath.long");
        return slow ? (quiet ? "quiet-long-expiration" : "long-expiration") : quiet ? "reduced" : "vesicular";
    }

    /**
     * Crackles. Secretions burst in large airways, early in the breath in, and profuse ones into its middle and in the breath
     * out; stiff or wet small airways snap open late. A cough moves secretions only.
     */
    public String crackles(boolean afterCough) {
        if (!airMoves()) {
            return "none";
        }
        double small = Math.max(zone.of(STIFF), zone.of(WET));
        double large = zone.of(SECRETION) * (afterCough ? constant("lung.cough") : 1);
        boolean profuse = large >= constant("lung.crackle.profuse");
        if (profuse) {
            return zone.of(WET) >= constant("lung.crackle.flooded") ? "throughout-coarse" : "mid-coarse";
        }
        if (small >= constant("lung.crackle.small")) {
            return "late-fine";
        }
        return large >= constant("lung.crackle.big") ? "early-coarse" : "none";
    }

    /** A narrowed airway sings as long as air passes: many notes where many are narrow, one where one bronchus is. */
    public String wheeze() {
        if (!airMoves()) {
            return "none";
        }
        if (zone.of(NARROW) >= constant("lung.wheeze.narrow")) {
            return zone.of(SECRETION) >= constant("lung.wheeze.secretion") ? "low" : "many";
        }
        double blocked = zone.of(BLOCKED);
        boolean sings = blocked >= constant("lung.wheeze.blocked") && blocked < constant("lung.wheeze.shut");
        return sings && zone.of(SOLID) < constant("lung.wheeze.blocked") ? "one" : "none";
    }

    /** Rough pleura that touches; fluid or air holds the two layers apart. */
    public String rub() {
        double touching = zone.of(RUB) * (1 - zone.of(FLUID)) * (1 - zone.of(GAS));
        return touching >= constant("lung.rub") ? "rub" : "none";
    }

    /** Whether words and vowels reach the ear with their high notes. */
    public boolean clearWords() {
        return zone.throughSolid() >= constant("lung.words");
    }

    private boolean airMoves() {
        double moves =
                zone.open() * (1 - zone.of(GONE)) * narrowed() * zone.through("lung.breath.fluid", "lung.breath.gas");
        return moves >= constant("lung.flow");
    }

    /** Only severe narrowing silences. */
    private double narrowed() {
        return 1 - constant("lung.breath.narrow") * Math.pow(zone.of(NARROW), 3);
    }

    private double constant(String name) {
        return zone.constant(name);
    }
}

package org.manubrium.patient.sign;

/** A stretch of time with the same light on each eye, in lux, and the eyes set for far or near. */
record Spell(double seconds, double right, double left, boolean near) {

    static Spell even(double seconds, double lux) {
        return new Spell(seconds, lux, lux, false);
    }
}

package org.manubrium.patient.sign;

import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Person;
import org.manubrium.patient.Physiology;

/** Who looks at whom: the person and the act, but nothing of what ails the person. */
record Onlooker(Person person, Physiology physiology, Manoeuvre manoeuvre, Probe probe) {
    double constant(String name) {
        return physiology.constant(name);
    }

    /** How much a wall of this build damps what is heard through it, dB; the same on both sides. */
    double wall() {
        return constant("heart.cover.wall") * physiology.build(person.build(), "chest.wall");
    }

    /** A number of one look, drawn from the person's seed, -1..1. */
    double own(String trait) {
        return person.variation().of(trait);
    }
}

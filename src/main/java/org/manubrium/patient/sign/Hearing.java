package org.manubrium.patient.sign;

import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;

/**
 * What one ear loses, in decibels: by the way the sound takes to the inner ear ({@code gap}), and from the inner ear on
 * ({@code sensing}). Bone conduction goes round the first.
 *
 * <p>Known limits: one pitch stands for all of them; a loss of long standing pulls the Weber like a new one.
 */
record Hearing(double gap, double sensing) {

    static Hearing of(Body body, Side ear) {
        double most = number(body, "hearing.conductive-most");
        double dead = number(body, "hearing.sensing-most");
        return new Hearing(
                most * (1 - body.conduction(conduction(body, ear))),
                resting(body, ear) + dead * (1 - body.conduction(sensing(body, ear))));
    }

    private static double resting(Body body, Side ear) {
        Person person = body.person();
        double years = Math.max(0, person.age() - number(body, "hearing.age-from"));
        return number(body, "hearing.threshold")
                + years * number(body, "hearing.age-loss")
                + number(body, "hearing.unequal") * person.variation().of("hearing", ear);
    }

    static Pathway conduction(Body body, Side ear) {
        return body.anatomy().tract("sound conduction", ear, Segment.C1, "");
    }

    static Pathway sensing(Body body, Side ear) {
        return body.anatomy().tract("sound sensing", ear, Segment.C1, "");
    }

    static double number(Body body, String name) {
        return body.physiology().constant(name);
    }

    /** The softest sound heard through the air, in decibels. */
    double air() {
        return gap + sensing;
    }
}

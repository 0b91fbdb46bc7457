package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;

/** What one eye sees: through its media, at each point of its field, and how fine. */
record Sight(Body body, Side eye) {
    private static final List<String> CENTRE = List.of("centre-outer", "centre-inner");
    private static final List<String> BESIDE =
            List.of("upper-outer", "lower-outer", "upper-inner", "lower-inner", "far-outer");

    /** From the retina to the cortex, for one point of the field. */
    Pathway field(String point) {
        return CranialMotor.tract(body, "field " + point, eye);
    }

    /** Cornea, lens and vitreous. */
    Pathway media() {
        return CranialMotor.tract(body, "light in the eye", eye);
    }

    /** The better half of the centre: either is enough to read with. */
    double centre() {
        return best(CENTRE);
    }

    private double best(List<String> points) {
        double best = 0;
        for (String point : points) {
            best = Math.max(best, body.conduction(field(point)));
        }
        return best;
    }

    /** The smallest letters read, as the logarithm of the angle in minutes (logMAR). */
    double acuity(boolean pinhole) {
        double worst = number("acuity.worst");
        double sensed = Math.min(coarse(centre(), 0), coarse(best(BESIDE), number("acuity.beside")));
        double media =
                -number("acuity.per-log") * Math.log10(1 - number("acuity.media") * (1 - body.conduction(media())));
        double blur = body.quantity("eye." + eye.word() + ".blur");
        if (pinhole) {
            media *= 1 - number("acuity.pinhole-media");
            blur = Math.min(blur, number("acuity.pinhole-leaves"));
        }
        return sensed >= worst ? worst : Math.min(worst, own() + sensed + media + blur);
    }

    /** What is left to see with when only a share of the fibres is kept. */
    private double coarse(double kept, double from) {
        double worst = number("acuity.worst");
        return kept < number("acuity.none")
                ? worst
                : Math.min(worst, from - number("acuity.per-log") * Math.log10(kept));
    }

    private double own() {
        Person person = body.person();
        double years = Math.max(0, person.age() - number("acuity.age-from"));
        return number("acuity.best")
                + number("acuity.spread") * person.variation().of("acuity", eye)
                + years * number("acuity.age-loss");
    }

    /** How red a red target looks, 0..1. */
    double red() {
        return centre() * Math.pow(body.conduction(media()), number("red.media"));
    }

    /** The strands of reading with the middle of the eye. */
    List<Strand> strands() {
        List<Strand> found = new java.util.ArrayList<>();
        found.add(new Strand("media", media()));
        found.addAll(Pieces.of(field(CENTRE.get(0)), field(CENTRE.get(1))));
        return List.copyOf(found);
    }

    private double number(String name) {
        return body.physiology().constant(name);
    }
}

package org.manubrium.patient.sign;

import org.manubrium.patient.Person;
import org.manubrium.patient.Physiology;

/**
 * How wide the healthy pupils of one person stand in a steady light, in millimetres.
 *
 * <p>The mean size at a reference age is a line through measured sizes over the logarithm of the light; age moves it by so
 * many millimetres a year, less in bright light than in dim (Winn 1994). Light is in lux falling on both eyes.
 */
final class PupilSize {
    private static final int SIZES = 4;
    private static final int SLOPES = 4;

    private final Line sizes;
    private final Line slopes;
    private final double years;
    private final double personal;
    private final double darkness;
    private final double dark;
    private final double bright;

    PupilSize(Physiology numbers, Person person) {
        this.sizes = Line.read(numbers, "pupil.size", SIZES);
        this.slopes = Line.read(numbers, "pupil.slope", SLOPES);
        this.years = person.age() - numbers.constant("pupil.age");
        this.personal =
                1 + numbers.constant("pupil.spread") * person.variation().of("pupil-size");
        this.darkness = numbers.constant("pupil.light.dark");
        this.dark = at(darkness);
        this.bright = at(numbers.constant("pupil.light.bright"));
    }

    double at(double lux) {
        double light = Math.log10(Math.max(lux, darkness));
        return personal * (sizes.value(light) + years * slopes.value(light));
    }

    double dark() {
        return dark;
    }

    /** Where a size lies between that in bright light, 0, and that in the dark, 1. */
    double share(double millimetres) {
        return Math.max(0, Math.min(1, (millimetres - bright) / (dark - bright)));
    }
}

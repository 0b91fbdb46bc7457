package org.manubrium.patient.sign;

import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * Both eyes of one person. What comes in by either is added and drives both pupils alike, so that a lesion on the way in
 * never makes them unequal.
 *
 * @param gainRight the share of the light falling on the right eye that counts, 0..1
 */
record Eyes(PupilSize size, Iris right, Iris left, double gainRight, double gainLeft, double nearShare) {

    static Eyes of(Body body) {
        PupilSize size = new PupilSize(body.physiology(), body.person());
        return new Eyes(
                size,
                Iris.of(body, size, Side.RIGHT),
                Iris.of(body, size, Side.LEFT),
                gain(body, Side.RIGHT),
                gain(body, Side.LEFT),
                nearShare(body));
    }

    private static double gain(Body body, Side eye) {
        return body.conduction(new PupilPaths(body.anatomy(), eye).lightIn());
    }

    /** Measured as millimetres per dioptre from about 4 mm; kept as a share so that a small pupil narrows in proportion. */
    private static double nearShare(Body body) {
        Physiology numbers = body.physiology();
        double each = Line.read(numbers, "pupil.near", 2).value(body.person().age());
        return each * numbers.constant("pupil.near-dioptres") / numbers.constant("pupil.near-from");
    }

    /** Where healthy pupils would rest with this much light on each eye, in lux; millimetres. */
    double healthy(double luxRight, double luxLeft) {
        return size.at((gainRight * luxRight + gainLeft * luxLeft) / 2);
    }

    Iris iris(Side eye) {
        return eye == Side.RIGHT ? right : left;
    }

    /** The size of one pupil at rest in an even light, in millimetres. */
    double resting(Side eye, double lux) {
        return iris(eye).target(healthy(lux, lux), 0);
    }
}

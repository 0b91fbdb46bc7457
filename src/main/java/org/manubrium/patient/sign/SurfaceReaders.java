package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.examination.Examination;

/** Everything that is read off the surface and the limbs from quantities: approach, hands, colour, arteries, legs, joints. */
final class SurfaceReaders {
    private SurfaceReaders() {}

    static List<SignReader> all(Examination examination) {
        return List.of(
                new QuantitySignReader(examination, "approach", ApproachSigns.all()),
                new QuantitySignReader(examination, "hand", HandSigns.all()),
                new QuantitySignReader(examination, "colour", ColourSigns.all()),
                new QuantitySignReader(examination, "skin", SkinSigns.all()),
                new QuantitySignReader(examination, "artery", ArterySigns.all()),
                new QuantitySignReader(examination, "leg", LegSigns.all()),
                new QuantitySignReader(examination, "joint", JointSigns.all()));
    }
}

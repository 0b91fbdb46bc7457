package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.examination.Examination;

/** Everything that reads the heart and its pulse. */
final class HeartReaders {
    private HeartReaders() {}

    static List<SignReader> all(Examination examination) {
        return List.of(
                new PrecordiumReader(examination),
                new ValveSoundReader(examination),
                new ExtraSoundReader(examination),
                new PericardialRubReader(examination),
                new MurmurReader(examination),
                new MurmurResponseReader(examination),
                new PulseReader(examination));
    }
}

package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.examination.Examination;

/** Everything that reads the chest. */
final class ChestReaders {
    private ChestReaders() {}

    static List<SignReader> all(Examination examination) {
        return List.of(
                new PercussionReader(examination),
                new BreathSoundReader(examination),
                new CrackleReader(examination),
                new WheezeReader(examination),
                new RubReader(examination),
                new ChestVoiceReader(examination),
                new ChestWordsReader(examination),
                new ExpansionReader(examination),
                new DiaphragmReader(examination),
                new WindpipeReader(examination),
                new BreathingRateReader(examination),
                new BreathingPatternReader(examination),
                new BreathingEffortReader(examination),
                new BreathingNoiseReader(examination),
                new LipsReader(examination),
                new ChestShapeReader(examination),
                new ChestScarReader(examination),
                new CostalMarginReader(examination),
                new BellyBreathReader(examination),
                new NeckLengthReader(examination),
                new ForcedBreathReader(examination),
                new RibPainReader(examination));
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.examination.Examination;

/** Every system that can be read. */
public final class Readers {
    private Readers() {}

    public static List<SignReader> all(Examination examination) {
        List<SignReader> all = new ArrayList<>(others(examination));
        all.addAll(ChestReaders.all(examination));
        all.addAll(TrunkReader.all(examination));
        all.addAll(HeartReaders.all(examination));
        all.addAll(SurfaceReaders.all(examination));
        return List.copyOf(all);
    }

    private static List<SignReader> others(Examination examination) {
        return List.of(
                new TendonReflexReader(examination),
                new RelaxationReader(),
                new PlantarReader(),
                new ClonusReader(),
                new PowerReader(examination),
                new FeelingReader(examination),
                new PupilReader(),
                new LidReader(),
                new WhisperReader(),
                new ForkReader(),
                new InspectionReader(),
                new NeckVeinReader(),
                new PressureReader(),
                new CranialPowerReader(),
                new SwerveReader(),
                new JawJerkReader(),
                new CornealReader(),
                new GagReader(),
                new FaceFeelingReader(),
                new SmellReader(),
                new AcuityReader(),
                new RedReader(),
                new FieldReader(),
                new CupReader(),
                new GazeReader(),
                new LidFatigueReader(),
                new ProptosisReader(),
                new LimbReader(),
                new BulkReader(examination),
                new SpasticityReader(examination));
    }
}

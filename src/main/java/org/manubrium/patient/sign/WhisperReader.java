package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** A set of six letters and numbers, whispered: how many are repeated. */
final class WhisperReader implements SignReader {
    private static final int SET = 6;

    @Override
    public String name() {
        return "whisper";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("whisper", repeated(body, probe) / (double) SET);
    }

    private static long repeated(Body body, Probe probe) {
        Side ear = probe.item().side();
        double heard = Hearing.of(body, ear).air();
        if (probe.choice("other-ear", "masked").equals("open")) {
            double shadow = Hearing.number(body, "hearing.head-shadow");
            heard = Math.min(heard, Hearing.of(body, ear.opposite()).air() + shadow);
        }
        double above =
                (Hearing.number(body, "hearing.whisper") - heard) / Hearing.number(body, "hearing.whisper-slope");
        return Math.round(SET / (1 + Math.exp(-above)));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Appearance(
                "whisper",
                List.of(),
                List.of(
                        new Appearance.Measure("whispered", SET, "letters and numbers"),
                        new Appearance.Measure("repeated rightly", repeated(body, probe), "of them")),
                "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side ear = probe.item().side();
        return List.of(
                new Strand("sound-conduction", Hearing.conduction(body, ear)),
                new Strand("sound-sensing", Hearing.sensing(body, ear)));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Graded) finding).amount() >= 0.5;
    }
}

package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Lungs;

/** What is heard of the breath at the bedside, without a stethoscope. */
final class BreathingNoiseReader extends ChestReader {
    private static final double SILENCE = -60;

    BreathingNoiseReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "breathing-noise";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        if (body.quantity("airway.upper") >= constant(body, "airway.stridor")) {
            return new Finding.Seen("stridor");
        }
        boolean audible = new Lungs(body).mean(Side.NONE, LungQuantity.NARROW) >= constant(body, "breathing.audible");
        boolean shut = new Lungs(body).mean(Side.NONE, LungQuantity.NARROW) >= constant(body, "lung.wheeze.shut");
        return new Finding.Seen(audible && !shut ? "wheeze" : "quiet");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids = LungQuantity.everywhere(Side.NONE, LungQuantity.NARROW);
        ids.add("airway.upper");
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "quiet";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        String code = seen(finding);
        boolean in = code.equals("stridor");
        boolean out = code.equals("wheeze");
        return new Appearance(
                "bedside-noise",
                List.of(),
                List.of(
                        measure("tone", in ? 700 : out ? 400 : 0, "Hz"),
                        measure("breath in, level", in ? 10 : SILENCE, "dB"),
                        measure("breath out, level", out ? 6 : SILENCE, "dB")),
                "");
    }
}

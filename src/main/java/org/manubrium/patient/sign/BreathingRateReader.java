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

/** How often the patient breathes in a minute. */
final class BreathingRateReader extends ChestReader {
    BreathingRateReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "breathing-rate";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(Math.rint(new Lungs(body).rate()), "a minute");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids = LungQuantity.everywhere(
                Side.NONE,
                LungQuantity.GONE,
                LungQuantity.BLOCKED,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.TRAPPED,
                LungQuantity.NARROW,
                LungQuantity.WET,
                LungQuantity.STIFF);
        ids.addAll(List.of("breathing.rate", "breathing.depression", "lung.right.pressure", "lung.left.pressure"));
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "";
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double rate = amount(finding);
        return rate >= constant(body, "breathing.least") && rate <= constant(body, "breathing.most");
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance(
                "breathing-watch",
                List.of(BreathingTrace.even(amount(finding), BreathingTrace.USUAL_MM)),
                List.of(),
                "");
    }
}

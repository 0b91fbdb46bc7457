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

/** The work of breathing that shows in the neck and between the ribs. */
final class BreathingEffortReader extends ChestReader {
    BreathingEffortReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "breathing-effort";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("breathing-effort", new Lungs(body).effort());
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids = LungQuantity.everywhere(
                Side.NONE,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.NARROW,
                LungQuantity.WET,
                LungQuantity.STIFF);
        ids.addAll(List.of("airway.upper", "lung.right.pressure", "lung.left.pressure"));
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "easy";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double effort = amount(finding);
        return new Appearance(
                "breathing-effort",
                List.of(),
                List.of(
                        measure("neck muscles stand out", 8 * Math.min(1, Math.max(0, effort - 0.2)), "mm"),
                        measure("spaces between the ribs go in", 12 * Math.min(1, Math.max(0, effort - 0.8)), "mm")),
                "");
    }
}

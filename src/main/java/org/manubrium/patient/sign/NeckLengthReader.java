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

/** The distance between larynx and breast bone, cm: a chest filled up lifts the breast bone. */
final class NeckLengthReader extends ChestReader {
    NeckLengthReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "neck-length";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double trapped = new Lungs(body).mean(Side.NONE, LungQuantity.TRAPPED);
        double usual = constant(body, "neck.length")
                + constant(body, "neck.length.spread")
                        * body.person().variation().of("neck-length");
        double cm = usual * (1 - constant(body, "neck.length.trapped") * trapped);
        return new Finding.Measured(Math.rint(cm * 10) / 10, "cm");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return LungQuantity.everywhere(Side.NONE, LungQuantity.TRAPPED);
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "";
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return amount(finding) >= constant(body, "neck.length.least");
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance(
                "neck-length", List.of(), List.of(measure("cricoid to notch", 10 * amount(finding), "mm")), "");
    }
}

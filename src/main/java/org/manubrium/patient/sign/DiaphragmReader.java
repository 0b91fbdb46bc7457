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
import org.manubrium.patient.lung.ChestMovement;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Zone;

/** How far the lower edge of resonance travels between a full breath out and a full breath in, cm. */
final class DiaphragmReader extends ChestReader {
    private static final double FIRST_MARK = 40;

    DiaphragmReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "diaphragm";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(
                new ChestMovement(body).diaphragm(probe.item().side()), "cm");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side side = probe.item().side();
        Set<String> ids = LungQuantity.ids(
                side,
                Zone.LOWER_BACK,
                LungQuantity.GONE,
                LungQuantity.FLUID,
                LungQuantity.SOLID,
                LungQuantity.TRAPPED,
                LungQuantity.STIFF);
        ids.add("lung." + side.word() + ".diaphragm");
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "";
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return amount(finding) >= constant(body, "diaphragm.least");
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance(
                "diaphragm-marks",
                List.of(),
                List.of(
                        measure("dull from, breath out, below the shoulder blade's tip", FIRST_MARK, "mm"),
                        measure(
                                "dull from, breath in, below the shoulder blade's tip",
                                FIRST_MARK + 10 * amount(finding),
                                "mm")),
                "");
    }
}

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

/** How long a full forced breath out is heard over the windpipe, s. */
final class ForcedBreathReader extends ChestReader {
    ForcedBreathReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "forced-breath";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double years = Math.max(0, body.person().age() - constant(body, "chest.age-from"));
        double seconds = constant(body, "forced.seconds")
                + constant(body, "forced.spread") * body.person().variation().of("forced-breath")
                + constant(body, "forced.age") * years
                + constant(body, "forced.narrow") * new Lungs(body).mean(Side.NONE, LungQuantity.NARROW);
        return new Finding.Measured(Math.rint(Math.min(constant(body, "forced.limit"), seconds) * 10) / 10, "s");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return LungQuantity.everywhere(Side.NONE, LungQuantity.NARROW);
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "";
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return amount(finding) < constant(body, "forced.most");
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance("forced-breath", List.of(BreathingTrace.blown(amount(finding))), List.of(), "");
    }
}

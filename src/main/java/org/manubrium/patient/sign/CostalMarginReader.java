package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Lungs;

/** Which way the costal margin moves as the breath goes in. */
final class CostalMarginReader extends ChestReader {
    CostalMarginReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "costal-margin";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double trapped = new Lungs(body).mean(probe.item().side(), LungQuantity.TRAPPED);
        return new Finding.Seen(trapped >= constant(body, "margin.trapped") ? "inwards" : "outwards");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return LungQuantity.everywhere(probe.item().side(), LungQuantity.TRAPPED);
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "outwards";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double mm = seen(finding).equals("inwards") ? -9 : 14;
        return new Appearance("costal-margin", List.of(BreathingTrace.once("margin, outwards", mm)), List.of(), "");
    }
}

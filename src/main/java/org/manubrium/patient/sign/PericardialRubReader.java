package org.manubrium.patient.sign;

import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;

/** The rub of a rough pericardium at the left sternal edge; leaning forward brings it out. */
final class PericardialRubReader extends HeartReader {
    PericardialRubReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "heart-rub";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Heart heart = heart(body, probe);
        double touching =
                heart.of("pericardial-roughness") * (1 - heart.number("rub.parted") * heart.of("pericardial-fluid"));
        double lost = probe.position().equals("sitting-forward") ? 0 : heart.number("rub.lying-back");
        return new Finding.Seen(touching - lost >= heart.number("rub.heard") ? "rub" : "none");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sound(laid(heart(body, probe), "tricuspid", manoeuvre, probe), breath(manoeuvre, probe));
    }

    @Override
    public Set<String> quantities(Manoeuvre manoeuvre) {
        return Set.of("pericardial-roughness");
    }
}

package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** How red a target looks to one eye, if it is ten parts red to the better one. */
final class RedReader implements SignReader {
    private static final double PERCENT = 100;

    @Override
    public String name() {
        return "red";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(percent(body, probe.item().side()), "%");
    }

    private static double percent(Body body, Side eye) {
        double here = new Sight(body, eye).red();
        double better = Math.max(here, new Sight(body, eye.opposite()).red());
        return better == 0 ? 0 : Math.round(here / better * PERCENT / 10) * 10.0;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double parts = percent(body, probe.item().side()) / 10;
        return new Appearance(
                "red-target",
                List.of(),
                List.of(new Appearance.Measure(
                        "if it is ten parts red to the better eye, to this one", parts, "parts")),
                "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Sight(body, probe.item().side()).strands();
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Measured) finding).value() >= body.physiology().constant("red.normal");
    }
}

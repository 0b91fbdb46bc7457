package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** How far the eye stands out in front of the outer rim of its orbit, in millimetres. */
final class ProptosisReader implements SignReader {

    @Override
    public String name() {
        return "proptosis";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(forward(body, probe.item().side()), "mm");
    }

    private static double forward(Body body, Side eye) {
        return Math.round(body.quantity(id(eye)) * 2) / 2.0;
    }

    private static String id(Side eye) {
        return "orbit." + eye.word() + ".forward";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Appearance(
                "eyes-from-the-side", List.of(), List.of(measure(body, Side.RIGHT), measure(body, Side.LEFT)), "");
    }

    private static Appearance.Measure measure(Body body, Side eye) {
        return new Appearance.Measure(eye.word() + " eye in front of the rim by", forward(body, eye), "mm");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of();
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of(id(probe.item().side()));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double here = ((Finding.Measured) finding).value();
        double other = forward(body, probe.item().side().opposite());
        return here < body.physiology().constant("proptosis.limit")
                && here - other <= body.physiology().constant("proptosis.unequal");
    }
}

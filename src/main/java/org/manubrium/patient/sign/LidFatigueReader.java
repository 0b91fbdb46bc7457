package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** By how much the opening of the lids falls in a minute of looking up: only a weak junction tires. */
final class LidFatigueReader implements SignReader {
    private static final double STEP_MS = 2000;
    private static final int SAMPLES = 31;
    private static final double MINUTE_MS = 60_000;

    @Override
    public String name() {
        return "lid-fatigue";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side eye = probe.item().side();
        double fall = opening(body, eye, 0) - opening(body, eye, MINUTE_MS);
        return new Finding.Measured(Math.round(fall * 10) / 10.0, "mm");
    }

    private static double opening(Body body, Side eye, double ms) {
        double open = LidReader.opening(body, eye);
        double closed = Math.min(open, body.physiology().constant("lid.without-levator"));
        double passed = body.kept(Site.at("cranial muscle junction", eye, "lid levator"));
        double tired = body.physiology().constant("lid.fatigue") * (1 - passed) * ms / MINUTE_MS;
        double left = passed == 0 ? 0 : Math.max(0, passed - tired) / passed;
        return Math.round((closed + (open - closed) * left) * 10) / 10.0;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Appearance(
                "lids-looking-up", List.of(curve(body, Side.RIGHT), curve(body, Side.LEFT)), Complexion.of(body), "");
    }

    private static Appearance.Curve curve(Body body, Side eye) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            samples.add(opening(body, eye, i * STEP_MS));
        }
        return new Appearance.Curve(eye.word(), "mm", STEP_MS, List.copyOf(samples));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of(new Strand(
                "lid-levator", new PupilPaths(body.anatomy(), probe.item().side()).lidLevator()));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Measured) finding).value() < body.physiology().constant("lid.fatigue-limit");
    }
}

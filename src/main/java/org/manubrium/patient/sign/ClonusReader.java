package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Clonus: the beats that follow a quick stretch held, counted. Comes when the tendon reflex is released far enough. */
final class ClonusReader implements SignReader {
    private static final double STEP_MS = 12.5;
    private static final int SAMPLES = 240;

    @Override
    public String name() {
        return "clonus";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(beats(body, manoeuvre.part(), probe.item().side()), "beats");
    }

    private static double beats(Body body, String arc, Side side) {
        double above = ReflexModel.answer(body, arc, side) - body.physiology().constant("clonus.from");
        return above < 0
                ? 0
                : Math.min(
                        body.physiology().constant("clonus.most"),
                        body.physiology().constant("clonus.first")
                                + Math.floor(above * body.physiology().constant("clonus.beats-per-answer")));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double beats = beats(body, manoeuvre.part(), probe.item().side());
        double hertz = body.physiology().constant("clonus.hertz");
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double t = i * STEP_MS / 1000;
            double stretch = 12 * Math.min(1, t / 0.1);
            double beat = t > 0.1 && (t - 0.1) * hertz < beats ? 6 * Math.sin((t - 0.1) * hertz * 2 * Math.PI) : 0;
            samples.add(Math.round((stretch - Math.max(0, beat)) * 10) / 10.0);
        }
        return new Appearance(
                "clonus", List.of(new Appearance.Curve("foot bent up", "degrees", STEP_MS, samples)), List.of(), "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return TendonReflexReader.arcAndControl(
                body, manoeuvre.part(), probe.item().side());
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Measured) finding).value() < body.physiology().constant("clonus.abnormal-from");
    }
}

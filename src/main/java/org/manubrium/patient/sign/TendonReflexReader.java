package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Scale;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** The tendon reflexes: how lively the answer to a tap is. */
final class TendonReflexReader implements SignReader {
    private final Examination examination;

    TendonReflexReader(Examination examination) {
        this.examination = examination;
    }

    @Override
    public String name() {
        return "tendon-reflex";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return find(body, manoeuvre, probe.item().side());
    }

    private static Finding.Graded find(Body body, Manoeuvre manoeuvre, Side side) {
        return new Finding.Graded("reflex", ReflexModel.answer(body, manoeuvre.part(), side));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return tapped(body, manoeuvre.part(), probe);
    }

    /** What a tap shows; the same for every sign that is read off it. */
    static Appearance tapped(Body body, String arc, Probe probe) {
        boolean reinforced = !probe.choice("reinforcement", "none").equals("none");
        double answer = ReflexModel.answer(body, arc, probe.item().side());
        TapTrace trace = TapTrace.of(body, ReflexModel.seen(body, answer, reinforced));
        return new Appearance(
                "tendon-tap", List.of(trace.curve(probe.item().side().word())), List.of(), "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return arcAndControl(body, manoeuvre.part(), probe.item().side());
    }

    static List<Strand> arcAndControl(Body body, String arc, Side side) {
        return List.of(
                new Strand("arc", body.anatomy().arc(arc, side)),
                new Strand("control", body.anatomy().control(arc, side)));
    }

    /**
     * Normal is what the person would show in health; a grade off that is still normal where it lies within the normal
     * range and the other side is alike. A difference between the sides of one grade is not normal on the side that has
     * changed.
     */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        Scale scale = examination.scale(manoeuvre.scale());
        Side side = probe.item().side();
        String here = scale.grade(((Finding.Graded) finding).amount()).code();
        String healthy =
                scale.grade(find(body.healthy(), manoeuvre, side).amount()).code();
        String other =
                scale.grade(find(body, manoeuvre, side.opposite()).amount()).code();
        return here.equals(healthy) || (Set.of("2", "3").contains(here) && here.equals(other));
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Sex;

/** Power of one movement: what still passes from the cortex to its muscles. */
final class PowerReader implements SignReader {
    private final Examination examination;

    PowerReader(Examination examination) {
        this.examination = examination;
    }

    @Override
    public String name() {
        return "power";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("power", passed(body, manoeuvre, probe));
    }

    /** What passes; less of it while the patient attends to the limb, where attention itself gets in the way. */
    private static double passed(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side side = probe.item().side();
        String part = manoeuvre.part();
        if (side != Side.NONE) {
            return body.conduction(body.anatomy().motor(part, side)) * Attention.kept(body, part, side);
        }
        return (body.conduction(body.anatomy().motor(part, Side.RIGHT))
                        + body.conduction(body.anatomy().motor(part, Side.LEFT)))
                / 2;
    }

    /** What the limb does by itself and against the hand; the student judges the grade. */
    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double passed = passed(body, manoeuvre, probe);
        double range = body.physiology().constant("power.range." + manoeuvre.part());
        double tightens = step(passed, body.physiology().constant("power.flicker"));
        double lying = range * step(passed, body.physiology().constant("power.lying"));
        double lifted = range * step(passed, body.physiology().constant("power.lifted"));
        double press = strength(body) * body.physiology().constant("power.newton-share." + manoeuvre.part());
        double push = press * against(body, passed);
        return new Appearance(
                "limb-power",
                List.of(),
                List.of(
                        new Appearance.Measure("muscle seen to tighten", 3 * tightens, "mm"),
                        new Appearance.Measure("limb resting on the couch moves", lying, "degrees"),
                        new Appearance.Measure("limb raised clear of the couch moves", lifted, "degrees"),
                        new Appearance.Measure("pushes the examiner's hand with", Math.rint(push), "N"),
                        new Appearance.Measure("the hand presses with", Math.rint(press), "N")),
                "");
    }

    private static double step(double passed, double from) {
        return passed >= from ? 1 : 0;
    }

    private static double against(Body body, double passed) {
        double from = body.physiology().constant("power.lifted");
        double full = body.physiology().constant("power.full");
        return Math.max(0, Math.min(1, (passed - from) / (full - from)));
    }

    private static double strength(Body body) {
        String who = body.person().sex() == Sex.FEMALE ? "power.newton-female" : "power.newton-male";
        double years = Math.max(0, body.person().age() - body.physiology().constant("power.age-from"));
        return body.physiology().constant(who) * (1 - years * body.physiology().constant("power.age-loss"));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        List<Strand> found = new ArrayList<>();
        for (Side side : Attention.sides(probe.item().side())) {
            found.add(new Strand("lower-motor", body.anatomy().lowerMotor(manoeuvre.part(), side)));
            found.add(new Strand("upper-motor", body.anatomy().upperMotor(manoeuvre.part(), side)));
        }
        return List.copyOf(found);
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Attention.quantities(body, manoeuvre.part(), probe.item().side());
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        var levels = examination.scale(manoeuvre.scale()).levels();
        return examination
                .scale(manoeuvre.scale())
                .grade(((Finding.Graded) finding).amount())
                .equals(levels.get(levels.size() - 1));
    }
}

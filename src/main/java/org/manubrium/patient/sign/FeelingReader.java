package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Feeling at one point of the skin or one joint: what still passes from there to the cortex. */
final class FeelingReader implements SignReader {
    /** What the patient is asked for beside the words. */
    static final String RATED = "the patient puts it at";

    private final Examination examination;

    FeelingReader(Examination examination) {
        this.examination = examination;
    }

    @Override
    public String name() {
        return "feeling";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("feeling", passed(body, manoeuvre, probe));
    }

    private static double passed(Body body, Manoeuvre manoeuvre, Probe probe) {
        Pathway path = body.anatomy()
                .sensory(manoeuvre.part(), probe.item().place(), probe.item().side());
        double enough = body.anatomy().modality(manoeuvre.part()).enough();
        return Math.min(1, body.conduction(path) / enough);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double passed = passed(body, manoeuvre, probe);
        String words = body.physiology().saying(manoeuvre.part(), passed);
        String label = manoeuvre.part().equals("joint-position") ? "surely told" : RATED;
        return new Appearance("skin-touch", List.of(), List.of(rated(body, label, passed)), words);
    }

    /** The number of ten that the patient gives it, which goes with the words. */
    static Appearance.Measure rated(Body body, String label, double passed) {
        double told = Math.rint(10 * passed);
        if (passed >= body.physiology().constant("feeling.same-from")) {
            told = 10;
        } else if (passed < body.physiology().constant("feeling.guessed-below")) {
            told = 0;
        }
        return new Appearance.Measure(label, told, "of 10");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of(new Strand(
                "feeling",
                body.anatomy()
                        .sensory(
                                manoeuvre.part(),
                                probe.item().place(),
                                probe.item().side())));
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

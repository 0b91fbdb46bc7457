package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Feeling on the face: the fifth nerve, save at the angle of the jaw, which two roots of the neck serve. */
final class FaceFeelingReader implements SignReader {
    private static final String ANGLE = "jaw-angle";

    @Override
    public String name() {
        return "face-feeling";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("feeling", body.conduction(path(body, manoeuvre, probe)));
    }

    private static boolean atAngle(Probe probe) {
        return probe.item().place().equals(ANGLE);
    }

    private static Pathway path(Body body, Manoeuvre manoeuvre, Probe probe) {
        if (atAngle(probe)) {
            String modality = manoeuvre.part().equals("pin") ? "pin" : "light-touch";
            return body.anatomy()
                    .sensory(modality, "c2-3-" + ANGLE, probe.item().side());
        }
        String tract = "face " + manoeuvre.part() + " " + probe.item().place();
        return CranialMotor.tract(body, tract, probe.item().side());
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double passed = body.conduction(path(body, manoeuvre, probe));
        String words = body.physiology().saying("face-" + manoeuvre.part(), passed);
        Appearance.Measure rated = FeelingReader.rated(body, FeelingReader.RATED, passed);
        return new Appearance("face-touch", List.of(), List.of(rated), words);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        String role = atAngle(probe) ? "jaw-angle-feeling" : "face-feeling";
        return List.of(new Strand(role, path(body, manoeuvre, probe)));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Graded) finding).amount() >= body.physiology().constant("face.feeling-normal");
    }
}

package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Smell by one nostril: whether anything is smelt, and whether two smells are told apart. */
final class SmellReader implements SignReader {

    @Override
    public String name() {
        return "smell";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("smell", body.conduction(path(body, probe)));
    }

    private static Pathway path(Body body, Probe probe) {
        return CranialMotor.tract(body, "smell", probe.item().side());
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        String words = body.physiology().saying("smell", body.conduction(path(body, probe)));
        return new Appearance("smelt", List.of(), List.of(), words);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of(new Strand("smell", path(body, probe)));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Graded) finding).amount() >= body.physiology().constant("smell.normal");
    }
}

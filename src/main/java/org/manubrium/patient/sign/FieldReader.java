package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/**
 * One point of the field of one eye, tried with a pin or a finger.
 *
 * <p>Known limits: the two halves of a field lost behind the chiasm are always of equal shape, in the optic tract too.
 */
final class FieldReader implements SignReader {

    @Override
    public String name() {
        return "field";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("field", body.conduction(path(body, probe)));
    }

    private static Pathway path(Body body, Probe probe) {
        return new Sight(body, probe.item().side()).field(probe.item().place());
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        String target = probe.choice("field-target", "red");
        String words = body.physiology().saying("field-" + target, body.conduction(path(body, probe)));
        return new Appearance("field-target", List.of(), List.of(), words);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Pieces.of(path(body, probe));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Graded) finding).amount() >= body.physiology().constant("field.full");
    }
}

package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/**
 * What the signs of the chest share: no pathway carries them, and what is shown follows from the finding and the person
 * alone, so that two patients with the same finding look, sound and feel the same.
 */
abstract class ChestReader implements SignReader {
    private final Examination examination;

    ChestReader(Examination examination) {
        this.examination = examination;
    }

    /** What a finding looks, sounds or feels like. */
    abstract Appearance show(Onlooker onlooker, Finding finding);

    /** The code of the manoeuvre's scale that health shows. */
    abstract String usual(Manoeuvre manoeuvre);

    @Override
    public final Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return show(new Onlooker(body.person(), body.physiology(), manoeuvre, probe), find(body, manoeuvre, probe));
    }

    @Override
    public final List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of();
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return code(manoeuvre, finding).equals(usual(manoeuvre));
    }

    private String code(Manoeuvre manoeuvre, Finding finding) {
        return finding instanceof Finding.Graded graded
                ? examination.scale(manoeuvre.scale()).grade(graded.amount()).code()
                : ((Finding.Seen) finding).code();
    }

    static double constant(Body body, String name) {
        return body.physiology().constant(name);
    }

    static double amount(Finding finding) {
        return finding instanceof Finding.Graded graded ? graded.amount() : ((Finding.Measured) finding).value();
    }

    static String seen(Finding finding) {
        return ((Finding.Seen) finding).code();
    }

    static Appearance.Measure measure(String label, double amount, String unit) {
        return new Appearance.Measure(label, Math.rint(amount * 10) / 10 + 0.0, unit);
    }
}

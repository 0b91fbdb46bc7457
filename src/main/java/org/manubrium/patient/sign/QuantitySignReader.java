package org.manubrium.patient.sign;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Reads the signs of one system that follow from quantities. */
final class QuantitySignReader implements SignReader {
    private final Examination examination;
    private final String name;
    private final Map<String, QuantitySign> signs;

    QuantitySignReader(Examination examination, String name, Map<String, QuantitySign> signs) {
        this.examination = examination;
        this.name = name;
        this.signs = Map.copyOf(signs);
    }

    @Override
    public String name() {
        return name;
    }

    private QuantitySign sign(Manoeuvre manoeuvre) {
        QuantitySign sign = signs.get(manoeuvre.part());
        if (sign == null) {
            throw new IllegalArgumentException("nothing of the " + name + " is called \"" + manoeuvre.part() + "\"");
        }
        return sign;
    }

    private Spot spot(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Spot(examination, body, manoeuvre, probe);
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).find().of(spot(body, manoeuvre, probe));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).show().of(spot(body, manoeuvre, probe));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).carried().by(spot(body, manoeuvre, probe));
    }

    /** Whatever is asked of the body while the sign is worked out. */
    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> asked = new LinkedHashSet<>();
        find(body.watched(asked::add), manoeuvre, probe);
        return asked;
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return sign(manoeuvre).judge().normal(spot(body, manoeuvre, probe), finding);
    }
}

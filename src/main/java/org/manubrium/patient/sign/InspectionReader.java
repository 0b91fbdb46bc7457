package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** What is plain to the eye at one place: drum, mouth, back of the eye. */
final class InspectionReader implements SignReader {
    private final Map<String, Look> looks = new HashMap<>();

    InspectionReader() {
        looks.putAll(DrumLooks.all());
        looks.putAll(MouthLooks.all());
        looks.putAll(FundusLooks.all());
        looks.putAll(OrbitLooks.all());
    }

    @Override
    public String name() {
        return "look";
    }

    private Look look(Manoeuvre manoeuvre) {
        Look look = looks.get(manoeuvre.part());
        if (look == null) {
            throw new IllegalArgumentException("nothing is looked at called \"" + manoeuvre.part() + "\"");
        }
        return look;
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(look(manoeuvre).read(body, probe.item().side()));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return look(manoeuvre).show(body, probe.item().side());
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return look(manoeuvre).paths().of(body, probe.item().side());
    }

    /** What is read depends on what is plain: the quantity behind it explains it, and no other. */
    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side side = probe.item().side();
        Set<String> found = new LinkedHashSet<>();
        for (Feature feature : look(manoeuvre).features()) {
            if (found.isEmpty() && feature.plain(body, side)) {
                found.addAll(feature.amount().quantities(side));
            }
        }
        return found;
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen(look(manoeuvre).usual()));
    }
}

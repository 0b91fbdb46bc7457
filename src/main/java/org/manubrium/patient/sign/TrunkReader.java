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
import org.manubrium.patient.trunk.Spot;

/** Reads the signs of one part of the trunk: the belly, the neck or the back. */
final class TrunkReader implements SignReader {
    private final String name;
    private final Map<String, TrunkSign> signs;
    private final Examination examination;

    TrunkReader(String name, Map<String, TrunkSign> signs, Examination examination) {
        this.name = name;
        this.signs = Map.copyOf(signs);
        this.examination = examination;
    }

    static List<SignReader> all(Examination examination) {
        return List.of(
                new TrunkReader("belly", BellySigns.all(), examination),
                new TrunkReader("neck", NeckSigns.all(), examination),
                new TrunkReader("back", BackSigns.all(), examination));
    }

    @Override
    public String name() {
        return name;
    }

    private TrunkSign sign(Manoeuvre manoeuvre) {
        TrunkSign sign = signs.get(manoeuvre.part());
        if (sign == null) {
            throw new IllegalArgumentException("no sign of the " + name + " is called \"" + manoeuvre.part() + "\"");
        }
        return sign;
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).read().of(Spot.of(body, probe));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).show(Spot.of(body, probe));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).paths().of(Spot.of(body, probe));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Spot spot = Spot.of(body, probe);
        Set<String> ids = new LinkedHashSet<>();
        sign(manoeuvre).needs().of(spot).forEach(id -> ids.add(spot.named(id)));
        return ids;
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return sign(manoeuvre).health().of(Spot.of(body, probe), finding, code(manoeuvre, finding));
    }

    private String code(Manoeuvre manoeuvre, Finding finding) {
        if (finding instanceof Finding.Graded graded) {
            return examination.scale(manoeuvre.scale()).grade(graded.amount()).code();
        }
        return finding instanceof Finding.Seen seen ? seen.code() : "";
    }
}

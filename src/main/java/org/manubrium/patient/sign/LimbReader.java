package org.manubrium.patient.sign;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** The signs of the limbs, of standing and of walking that are read as one of a set of words. */
final class LimbReader implements SignReader {
    private final Map<String, LimbSign> signs = new HashMap<>();

    LimbReader() {
        signs.putAll(ToneSigns.all());
        signs.putAll(CoordinationSigns.all());
        signs.putAll(StandingSigns.all());
        signs.putAll(GaitSigns.all());
        signs.putAll(ReflexSigns.all());
        signs.putAll(SuperficialSigns.all());
        signs.putAll(CortexSigns.all());
        signs.putAll(TremorSigns.all());
        signs.putAll(FunctionalSigns.all());
    }

    @Override
    public String name() {
        return "limb";
    }

    private LimbSign sign(Manoeuvre manoeuvre) {
        LimbSign sign = signs.get(manoeuvre.part());
        if (sign == null) {
            throw new IllegalArgumentException("no sign of the limbs is called \"" + manoeuvre.part() + "\"");
        }
        return sign;
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(read(body, manoeuvre, probe));
    }

    private String read(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).read().of(body, probe.item().side());
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        LimbSign sign = sign(manoeuvre);
        String code = read(body, manoeuvre, probe);
        return sign.show(
                new LimbNumbers(
                        body.physiology(),
                        body.person(),
                        manoeuvre.scale(),
                        code,
                        probe.item().side()),
                "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sign(manoeuvre).paths().of(body, probe.item().side());
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side side = probe.item().side();
        return sign(manoeuvre).quantities().of(side);
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen(sign(manoeuvre).usual()));
    }
}

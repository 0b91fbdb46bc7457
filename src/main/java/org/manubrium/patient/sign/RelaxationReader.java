package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** How fast a tendon reflex relaxes: milliseconds from the tap until half of the movement has gone. */
final class RelaxationReader implements SignReader {
    /** Said where there is no answer to time. */
    static final String NOT_TIMED = "cannot-be-timed";

    @Override
    public String name() {
        return "relaxation";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double answer = ReflexModel.answer(body, manoeuvre.part(), probe.item().side());
        double seen = ReflexModel.seen(body, answer, true);
        return seen == 0
                ? new Finding.Seen(NOT_TIMED)
                : new Finding.Measured(Math.round(TapTrace.of(body, seen).halfRelaxed()), "ms");
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return TendonReflexReader.tapped(body, manoeuvre.part(), probe);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return TendonReflexReader.arcAndControl(
                body, manoeuvre.part(), probe.item().side());
    }

    @Override
    public Set<String> quantities(Manoeuvre manoeuvre) {
        return Set.of("thyroid-state");
    }

    /** A reflex that cannot be timed is judged by its grade, not here: it is as normal as it would be in health. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        if (finding instanceof Finding.Measured measured) {
            return measured.value() >= body.physiology().constant("reflex.half-relaxed.least")
                    && measured.value() <= body.physiology().constant("reflex.half-relaxed.most");
        }
        return finding.equals(find(body.healthy(), manoeuvre, probe));
    }
}

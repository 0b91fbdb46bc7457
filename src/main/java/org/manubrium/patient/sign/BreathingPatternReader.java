package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.Lungs;

/** The rhythm and depth of breathing. */
final class BreathingPatternReader extends ChestReader {
    BreathingPatternReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "breathing-pattern";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double seen = constant(body, "pattern.seen");
        if (body.quantity("breathing.irregular") >= seen) {
            return new Finding.Seen("irregular");
        }
        if (body.quantity("breathing.periodic") >= seen) {
            return new Finding.Seen("periodic");
        }
        if (body.quantity("breathing.depth") >= seen) {
            return new Finding.Seen("deep");
        }
        return new Finding.Seen(new Lungs(body).rate() < constant(body, "pattern.slow") ? "slow" : "regular");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of("breathing.irregular", "breathing.periodic", "breathing.depth", "breathing.depression");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "regular";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance(
                "breathing-watch", List.of(BreathingTrace.pattern(onlooker, seen(finding))), List.of(), "");
    }
}

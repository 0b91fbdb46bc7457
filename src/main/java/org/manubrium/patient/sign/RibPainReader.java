package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Whether springing the ribs of one side hurts. */
final class RibPainReader extends ChestReader {
    RibPainReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "rib-pain";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded(
                "rib-pain", body.quantity("lung." + probe.item().side().word() + ".rib-pain"));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of("lung." + probe.item().side().word() + ".rib-pain");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double pain = amount(finding);
        return new Appearance(
                "rib-spring",
                List.of(Flinch.away(onlooker.physiology(), pain)),
                List.of(measure(Flinch.FACE, Flinch.face(onlooker.physiology(), pain), "%")),
                onlooker.physiology().saying("rib-spring", pain));
    }
}

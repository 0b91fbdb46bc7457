package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** A scar of an operation on the chest. */
final class ChestScarReader extends ChestReader {
    ChestScarReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "chest-scar";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double scar = body.quantity("lung." + probe.item().side().word() + ".scar");
        return new Finding.Seen(scar >= constant(body, "chest.shape") ? "scar" : "none");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of("lung." + probe.item().side().word() + ".scar");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return new Appearance(
                "chest-scar",
                List.of(),
                List.of(measure("pale line along the ribs", seen(finding).equals("scar") ? 210 : 0, "mm")),
                "");
    }
}

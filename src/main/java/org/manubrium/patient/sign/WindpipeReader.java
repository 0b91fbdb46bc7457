package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Lungs;

/** Where the windpipe lies, felt in the gap on one side: mm by which it lies toward that side. */
final class WindpipeReader extends ChestReader {
    WindpipeReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "trachea";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded(
                "trachea", new Lungs(body).windpipeToward(probe.item().side()));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids =
                LungQuantity.everywhere(Side.NONE, LungQuantity.SHRUNK, LungQuantity.FLUID, LungQuantity.GONE);
        ids.add("lung.right.pressure");
        ids.add("lung.left.pressure");
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "central";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double gap = onlooker.constant("trachea.gap") + onlooker.constant("trachea.gap.spread") * onlooker.own("neck");
        return new Appearance(
                "windpipe-gap",
                List.of(),
                List.of(measure("gap between windpipe and muscle", gap - amount(finding), "mm")),
                "");
    }
}

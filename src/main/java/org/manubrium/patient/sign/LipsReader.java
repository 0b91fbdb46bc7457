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

/** Whether the lips are pursed on breathing out, to keep narrowed airways open. */
final class LipsReader extends ChestReader {
    LipsReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "breathing-lips";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Lungs lungs = new Lungs(body);
        boolean narrow = lungs.mean(Side.NONE, LungQuantity.NARROW) >= constant(body, "lips.narrow");
        boolean full = lungs.mean(Side.NONE, LungQuantity.TRAPPED) >= constant(body, "lips.trapped");
        return new Finding.Seen(narrow && full ? "pursed" : "open");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return LungQuantity.everywhere(Side.NONE, LungQuantity.TRAPPED, LungQuantity.NARROW);
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "open";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        boolean pursed = seen(finding).equals("pursed");
        return new Appearance(
                "lips",
                List.of(),
                List.of(
                        measure("width of the mouth on breathing out", pursed ? 26 : 52, "mm"),
                        measure("opening on breathing out", pursed ? 4 : 9, "mm"),
                        measure("breath out lasts", pursed ? 4.2 : 2, "s")),
                "");
    }
}

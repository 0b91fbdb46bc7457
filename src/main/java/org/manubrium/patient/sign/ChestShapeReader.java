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

/** The shape of the chest. */
final class ChestShapeReader extends ChestReader {
    private static final List<String> SHAPES = List.of("twist", "funnel", "keel");

    ChestShapeReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "chest-shape";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double seen = constant(body, "chest.shape");
        for (String shape : SHAPES) {
            if (body.quantity("chest." + shape) >= seen) {
                return new Finding.Seen(shape.equals("twist") ? "twisted" : shape);
            }
        }
        return new Finding.Seen(new Lungs(body).mean(Side.NONE, LungQuantity.TRAPPED) >= seen ? "barrel" : "usual");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids = LungQuantity.everywhere(Side.NONE, LungQuantity.TRAPPED);
        SHAPES.forEach(shape -> ids.add("chest." + shape));
        return ids;
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "usual";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        String code = seen(finding);
        double deep = code.equals("barrel") ? 0.95 : 0.72 + 0.03 * onlooker.own("chest-depth");
        double stands = code.equals("keel") ? 25 : code.equals("funnel") ? -30 : 0;
        return new Appearance(
                "chest-shape",
                List.of(),
                List.of(
                        measure("width", 300, "mm"),
                        measure("depth", 300 * deep, "mm"),
                        measure("breast bone stands out", stands, "mm"),
                        measure("one side behind the other", code.equals("twisted") ? 28 : 0, "mm")),
                "");
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** One side of the throat is touched: in by the ninth nerve, out to both halves of the palate by the tenth. */
final class GagReader implements SignReader {
    private static final double RISE_MM = 12;

    @Override
    public String name() {
        return "gag";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("gag", answer(body, probe.item().side()));
    }

    private static double answer(Body body, Side touched) {
        return (pulled(body, touched, Side.RIGHT) + pulled(body, touched, Side.LEFT)) / 2;
    }

    /** How far one half of the palate answers, 0..1. */
    private static double pulled(Body body, Side touched, Side half) {
        if (body.person().variation().of("gag") > body.physiology().constant("gag.none")) {
            return 0;
        }
        return body.conduction(inward(body, touched)) * body.conduction(CranialMotor.lower(body, "palate", half));
    }

    private static Pathway inward(Body body, Side side) {
        return CranialMotor.tract(body, "throat in", side);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side touched = probe.item().side();
        List<Appearance.Measure> seen = new ArrayList<>();
        seen.add(measure("palate drawn up by", answer(body, touched)));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            seen.add(measure(side.word() + " arch drawn up by", pulled(body, touched, side)));
        }
        return new Appearance("throat-touch", List.of(), List.copyOf(seen), "");
    }

    private static Appearance.Measure measure(String label, double share) {
        return new Appearance.Measure(label, Math.round(RISE_MM * share), "mm");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of(
                new Strand("throat-in", inward(body, probe.item().side())),
                new Strand("throat-out", CranialMotor.lower(body, "palate", Side.RIGHT)),
                new Strand("throat-out", CranialMotor.lower(body, "palate", Side.LEFT)));
    }

    /** Some healthy people have none. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double healthy = answer(body.healthy(), probe.item().side());
        double limit = body.physiology().constant("gag.present");
        return ((Finding.Graded) finding).amount() >= limit || healthy < limit;
    }
}

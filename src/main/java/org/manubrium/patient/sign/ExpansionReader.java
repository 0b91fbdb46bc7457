package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.ChestMovement;
import org.manubrium.patient.lung.LungQuantity;

/** Expansion of the chest: what each thumb travels from the midline, or what a tape round the chest gains, in cm. */
final class ExpansionReader extends ChestReader {
    private static final double STEP_MS = 50;
    private static final int SAMPLES = 90;

    ExpansionReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "expansion";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(cm(body, manoeuvre, probe.item().side(), upper(probe)), "cm");
    }

    private static double cm(Body body, Manoeuvre manoeuvre, Side side, boolean upper) {
        ChestMovement movement = new ChestMovement(body);
        return tape(manoeuvre) ? movement.tape() : movement.thumb(side, upper);
    }

    private static boolean tape(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("tape");
    }

    private static boolean upper(Probe probe) {
        return probe.item().place().equals("upper");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Set<String> ids = LungQuantity.everywhere(
                probe.item().side(),
                LungQuantity.GONE,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.SHRUNK,
                LungQuantity.TRAPPED,
                LungQuantity.STIFF,
                LungQuantity.NARROW);
        ids.add("chest.rigid");
        for (Side side : sides(probe)) {
            ids.add("lung." + side.word() + ".pain");
            ids.add("lung." + side.word() + ".diaphragm");
        }
        return ids;
    }

    private static List<Side> sides(Probe probe) {
        return probe.item().side() == Side.NONE
                ? List.of(Side.RIGHT, Side.LEFT)
                : List.of(probe.item().side());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "";
    }

    /** Enough for the age, and not lagging behind the other side. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        boolean upper = upper(probe);
        Side side = probe.item().side();
        double cm = amount(finding);
        double usual = new ChestMovement(body).usual(upper) * (tape(manoeuvre) ? 2 : 1);
        boolean enough = cm >= usual * constant(body, "chest.least");
        return enough && cm >= cm(body, manoeuvre, side.opposite(), upper) * constant(body, "chest.lag");
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double mm = 10 * amount(finding);
        return new Appearance(
                tape(onlooker.manoeuvre()) ? "chest-tape" : "chest-thumbs",
                List.of(new Appearance.Curve("from where it began", "mm", STEP_MS, breath(mm))),
                List.of(),
                "");
    }

    /** A full breath in, held for a moment, and out again. */
    private static List<Double> breath(double mm) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double t = i * STEP_MS / 1000;
            double in = Math.max(0, Math.min(1, (t - 0.3) / 1.6));
            double out = Math.max(0, Math.min(1, (t - 2.5) / 1.6));
            double share = Math.pow(Math.sin(in * Math.PI / 2), 2) * (1 - Math.pow(Math.sin(out * Math.PI / 2), 2));
            samples.add(Math.rint(mm * share * 10) / 10 + 0.0);
        }
        return List.copyOf(samples);
    }
}

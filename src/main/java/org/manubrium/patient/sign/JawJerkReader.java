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
import org.manubrium.patient.Phase;

/** The jaw jerk: slight in health, brisk when the control of both hemispheres is lost above the middle of the pons. */
final class JawJerkReader implements SignReader {
    private static final double STEP_MS = 5;
    private static final int SAMPLES = 60;
    private static final double BEAT_MS = 120;

    @Override
    public String name() {
        return "jaw-jerk";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("jaw-jerk", answer(body));
    }

    private static double answer(Body body) {
        double gain = body.physiology().constant("jaw-jerk.gain");
        double own = 1
                + body.physiology().constant("jaw-jerk.spread")
                        * body.person().variation().of("jaw-jerk");
        double typical = body.physiology().constant("jaw-jerk.typical") * own;
        return typical * arcKept(body) * (1 + gain * released(body));
    }

    private static double arcKept(Body body) {
        double kept = 0;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            kept += body.conduction(stretch(body, side)) * body.conduction(CranialMotor.lower(body, "bite", side)) / 2;
        }
        return kept;
    }

    /** One hemisphere is enough to hold it: only what is lost beyond that shows. */
    private static double released(Body body) {
        double needed = body.physiology().constant("need.bite");
        double lost = 0;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            double kept = 1 - body.lost(CranialMotor.upper(body, "bite", side), Phase.RELEASE);
            lost += (1 - Math.min(1, kept / needed)) / 2;
        }
        return lost;
    }

    private static Pathway stretch(Body body, Side side) {
        return CranialMotor.tract(body, "jaw stretch", side);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double degrees = answer(body) * body.physiology().constant("jaw-jerk.degrees");
        double delay = body.physiology().constant("jaw-jerk.delay");
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double along = (i * STEP_MS - delay) / BEAT_MS;
            double height = along > 0 && along < 1 ? degrees * Math.sin(along * Math.PI) : 0;
            samples.add(Math.round(height * 100) / 100.0);
        }
        return new Appearance(
                "jaw-tap",
                List.of(new Appearance.Curve("jaw", "degrees", STEP_MS, List.copyOf(samples))),
                List.of(),
                "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        List<Strand> found = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            found.add(
                    new Strand("jaw-arc", Pathway.series(stretch(body, side), CranialMotor.lower(body, "bite", side))));
            found.add(new Strand("jaw-control", CranialMotor.upper(body, "bite", side)));
        }
        return List.copyOf(found);
    }

    /** Slight and absent are both found in health, as long as they are this person's own. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double amount = ((Finding.Graded) finding).amount();
        double healthy = answer(body.healthy());
        double slight = body.physiology().constant("jaw-jerk.slight");
        boolean lost = amount < slight && healthy >= slight;
        return amount < body.physiology().constant("jaw-jerk.brisk") && !lost;
    }
}

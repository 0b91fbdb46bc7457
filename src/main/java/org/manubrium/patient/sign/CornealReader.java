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

/** One cornea is touched: in by the fifth nerve, out to the lids of both eyes by the seventh. */
final class CornealReader implements SignReader {
    static final String BOTH = "both";
    private static final double STEP_MS = 25;
    private static final int SAMPLES = 40;
    private static final double SHUT_MS = 100;
    private static final double OPEN_MS = 350;

    @Override
    public String name() {
        return "corneal";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side touched = probe.item().side();
        boolean here = blinks(body, touched, touched);
        boolean there = blinks(body, touched, touched.opposite());
        if (here && there) {
            return new Finding.Seen(BOTH);
        }
        return new Finding.Seen(here ? "this-only" : there ? "other-only" : "neither");
    }

    private static boolean blinks(Body body, Side touched, Side eye) {
        return blink(body, touched, eye) >= body.physiology().constant("blink.least");
    }

    private static double blink(Body body, Side touched, Side eye) {
        return body.conduction(inward(body, touched)) * body.conduction(CranialMotor.lower(body, "eye-closure", eye));
    }

    private static Pathway inward(Body body, Side eye) {
        return CranialMotor.tract(body, "cornea in", eye);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side touched = probe.item().side();
        return new Appearance(
                "cornea-touch",
                List.of(curve(body, touched, Side.RIGHT), curve(body, touched, Side.LEFT)),
                Complexion.of(body),
                "");
    }

    /** Millimetres between the lids from the touch on. */
    private static Appearance.Curve curve(Body body, Side touched, Side eye) {
        double open = body.physiology().constant("blink.depth");
        double least = body.physiology().constant("blink.least");
        double blink = blink(body, touched, eye);
        double shut = blink < least
                ? blink / 4
                : Math.min(1, blink / body.physiology().constant("face.full"));
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            samples.add(Math.round(open * (1 - shut * closed(i * STEP_MS)) * 10) / 10.0);
        }
        return new Appearance.Curve(eye.word(), "mm", STEP_MS, List.copyOf(samples));
    }

    private static double closed(double ms) {
        double falling = (ms - SHUT_MS) / 60;
        double rising = (OPEN_MS - ms) / 120;
        return Math.max(0, Math.min(1, Math.min(falling, rising)));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side touched = probe.item().side();
        return List.of(
                new Strand("cornea-in", inward(body, touched)),
                new Strand("blink-out", CranialMotor.lower(body, "eye-closure", touched)),
                new Strand("blink-out", CranialMotor.lower(body, "eye-closure", touched.opposite())));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen(BOTH));
    }
}

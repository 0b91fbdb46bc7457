package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** Both eyes following a finger from straight ahead to one end of the gaze, and what the patient sees there. */
final class GazeShown {
    private static final double STEP_MS = 25;
    private static final int SAMPLES = 120;
    private static final double BEATS_A_SECOND = 2.5;

    private final Body body;
    private final Gaze.Target right;

    /** @param right the target as the right eye takes it */
    GazeShown(Body body, Gaze.Target right) {
        this.body = body;
        this.right = right;
    }

    Appearance show() {
        List<Appearance.Measure> seen = new ArrayList<>(List.of(lid(Side.RIGHT), lid(Side.LEFT)));
        seen.addAll(Complexion.of(body));
        return new Appearance(
                "eye-movement",
                List.of(across(Side.RIGHT), up(Side.RIGHT), across(Side.LEFT), up(Side.LEFT)),
                List.copyOf(seen),
                body.physiology().saying("double", doubled()));
    }

    private Gaze.Target target(Side eye) {
        return eye == Side.RIGHT ? right : right.fromTheOtherEye();
    }

    private Appearance.Curve across(Side eye) {
        Gaze gaze = new Gaze(body, eye);
        double slow = target(eye).outward() < 0 ? lost(eye) : 0;
        double beats = target(eye).outward() > 0 ? lost(eye.opposite()) : 0;
        return curve(eye.word() + " outwards", gaze.outward(Gaze.Target.AHEAD), gaze.outward(target(eye)), slow, beats);
    }

    private Appearance.Curve up(Side eye) {
        Gaze gaze = new Gaze(body, eye);
        return curve(eye.word() + " upwards", gaze.upward(Gaze.Target.AHEAD), gaze.upward(target(eye)), 0, 0);
    }

    /** What the eye lacks of the fasciculus that turns it in: it is slow, and the other eye beats. */
    private double lost(Side eye) {
        return 1 - body.kept(Site.of("medial longitudinal fasciculus", eye));
    }

    private Appearance.Curve curve(String name, double from, double to, double slow, double beats) {
        double quick = body.physiology().constant("gaze.seconds");
        double seconds = quick + slow * (body.physiology().constant("gaze.slow-seconds") - quick);
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double t = i * STEP_MS / 1000;
            double beat = body.physiology().constant("gaze.beat-degrees") * beats * ((t * BEATS_A_SECOND) % 1);
            samples.add(Math.round((from + (to - from) * (1 - Math.exp(-t / seconds)) - beat) * 10) / 10.0);
        }
        return new Appearance.Curve(name, "degrees", STEP_MS, List.copyOf(samples));
    }

    private Appearance.Measure lid(Side eye) {
        return new Appearance.Measure(eye.word() + " lids open by", LidReader.opening(body, eye), "mm");
    }

    /** 0 one, 1 side by side, 2 one above the other, 3 both. A closed or blind eye sees no second one. */
    private int doubled() {
        for (Side eye : List.of(Side.RIGHT, Side.LEFT)) {
            if (LidReader.opening(body, eye) < 3 || new Sight(body, eye).acuity(false) > 1) {
                return 0;
            }
        }
        Gaze one = new Gaze(body, Side.RIGHT);
        Gaze other = new Gaze(body, Side.LEFT);
        double across = one.outward(target(Side.RIGHT)) + other.outward(target(Side.LEFT));
        double up = one.upward(target(Side.RIGHT)) - other.upward(target(Side.LEFT));
        int wide = Math.abs(across) > body.physiology().constant("gaze.double-across") ? 1 : 0;
        return wide + (Math.abs(up) > body.physiology().constant("gaze.double-up") ? 2 : 0);
    }
}

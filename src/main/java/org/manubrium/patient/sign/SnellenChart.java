package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** What is read of a chart at 6 m, and below it of a nearer chart, of fingers, of a moving hand and of a torch. */
final class SnellenChart {
    private static final double METRES = 6;
    private static final int TRIES = 3;
    private static final double NEARER = -Math.log10(0.05);
    private static final double FINGERS = 1.95;
    private static final double HAND = 2.45;
    private static final double TORCH = 2.95;

    /** One line: the distance in metres that is printed beside it, and its letters. */
    private record Line(double metres, int letters) {
        double logmar() {
            return Math.log10(metres / METRES);
        }
    }

    private static final List<Line> LINES = List.of(
            new Line(60, 1),
            new Line(36, 2),
            new Line(24, 3),
            new Line(18, 4),
            new Line(12, 5),
            new Line(9, 6),
            new Line(6, 7),
            new Line(5, 8));

    private SnellenChart() {}

    static List<Appearance.Measure> read(Body body, double logmar) {
        List<Appearance.Measure> seen = new ArrayList<>();
        for (Line line : LINES) {
            String label = "line marked " + Math.round(line.metres()) + " at 6 m";
            seen.add(measure(body, label, line.letters(), line.logmar(), logmar, "letters"));
        }
        seen.add(measure(body, "line marked 60 at 3 m", 1, NEARER, logmar, "letters"));
        seen.add(measure(body, "fingers held up at 1 m, right answers", TRIES, FINGERS, logmar, "tries"));
        seen.add(measure(body, "hand waved, right answers", TRIES, HAND, logmar, "tries"));
        seen.add(measure(body, "torch on or off, right answers", TRIES, TORCH, logmar, "tries"));
        return List.copyOf(seen);
    }

    private static Appearance.Measure measure(
            Body body, String label, int of, double size, double logmar, String unit) {
        double past = size + body.physiology().constant("acuity.line-half") - logmar;
        double share = 1 / (1 + Math.exp(-past / body.physiology().constant("acuity.line-slope")));
        return new Appearance.Measure(label, Math.round(of * share), "of " + of + " " + unit);
    }
}

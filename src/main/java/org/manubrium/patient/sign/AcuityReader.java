package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Acuity of one eye on two charts: the Snellen chart by lines, the logMAR chart by letters. */
final class AcuityReader implements SignReader {
    private static final int CHART_LINES = 14;
    private static final int LETTERS_A_LINE = 5;

    @Override
    public String name() {
        return "acuity";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        double logmar = logmar(body, probe);
        if (!isLetters(manoeuvre)) {
            return new Finding.Graded("acuity", -logmar);
        }
        return letters(body, logmar) == 0
                ? new Finding.Seen("below-chart")
                : new Finding.Measured(
                        hundredth(top(body)
                                - letters(body, logmar) * body.physiology().constant("acuity.letter")),
                        "logMAR");
    }

    /** A letter is 0.02, so that two places hold every reading of the chart. */
    private static double hundredth(double logmar) {
        return Math.rint(logmar * 100) / 100 + 0.0;
    }

    private static boolean isLetters(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("logmar");
    }

    private static double logmar(Body body, Probe probe) {
        boolean pinhole = probe.choice("pinhole", "none").equals("pinhole");
        return new Sight(body, probe.item().side()).acuity(pinhole);
    }

    private static double top(Body body) {
        return body.physiology().constant("acuity.chart-top");
    }

    private static long letters(Body body, double logmar) {
        double read = Math.rint((top(body) - logmar) / body.physiology().constant("acuity.letter"));
        return Math.round(Math.max(0, Math.min(CHART_LINES * LETTERS_A_LINE, read)));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double logmar = logmar(body, probe);
        return isLetters(manoeuvre)
                ? new Appearance("letter-chart", List.of(), rows(letters(body, logmar)), "")
                : new Appearance("acuity-chart", List.of(), SnellenChart.read(body, logmar), "");
    }

    private static List<Appearance.Measure> rows(long letters) {
        List<Appearance.Measure> seen = new ArrayList<>();
        for (int line = 0; line < CHART_LINES; line++) {
            long left = Math.max(0, Math.min(LETTERS_A_LINE, letters - (long) line * LETTERS_A_LINE));
            seen.add(new Appearance.Measure("line " + (line + 1), left, "of 5 letters"));
        }
        return List.copyOf(seen);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Sight(body, probe.item().side()).strands();
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of("eye." + probe.item().side().word() + ".blur");
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double limit = body.physiology().constant("acuity.normal");
        if (finding instanceof Finding.Graded graded) {
            double line = body.physiology().constant("acuity.line-half");
            return graded.amount() >= -limit - line;
        }
        return finding instanceof Finding.Measured measured && measured.value() <= limit;
    }
}

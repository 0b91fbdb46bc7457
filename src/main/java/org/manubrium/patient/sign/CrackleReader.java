package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungSounds;
import org.manubrium.patient.lung.LungZone;

/** Crackles over one zone: when in the breath they come, and whether they are fine or coarse. */
final class CrackleReader extends ZoneReader {
    CrackleReader(Examination examination) {
        super(examination, LungQuantity.SECRETION, LungQuantity.WET, LungQuantity.STIFF);
    }

    @Override
    public String name() {
        return "crackles";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        boolean coughed = probe.choice("cough", "before").equals("after");
        return new Finding.Seen(new LungSounds(zone).crackles(coughed));
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        String stem = "crackle." + seen(finding) + ".";
        return LungSound.clicks(
                onlooker,
                new LungSound.Clicks(
                        times(onlooker, stem),
                        even(onlooker.constant(stem + "out-count")),
                        onlooker.constant(stem + "hertz"),
                        onlooker.constant(stem + "ms"),
                        onlooker.constant(stem + "db")));
    }

    /** They come closer together towards the end of their part of the breath in. */
    private static List<Double> times(Onlooker onlooker, String stem) {
        double count = onlooker.constant(stem + "count");
        double from = onlooker.constant(stem + "from");
        double span = onlooker.constant(stem + "to") - from;
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double spread = (i + 0.5 + 0.3 * onlooker.own("crackle-" + i)) / count;
            times.add(from + span * (1 - Math.pow(1 - spread, 1.4)));
        }
        return List.copyOf(times);
    }

    private static List<Double> even(double count) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            times.add(0.1 + 0.5 * i / count);
        }
        return List.copyOf(times);
    }
}

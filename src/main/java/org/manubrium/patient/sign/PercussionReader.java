package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungZone;

/** How a zone of the chest rings when it is tapped. */
final class PercussionReader extends ZoneReader {
    /** The notes whose sound is tabled, and how much each rings; between them the sound is interpolated. */
    private static final List<String> NOTES = List.of("stony", "dull", "resonant", "hyper");

    private static final double[] AMOUNTS = {0.05, 0.4, 1, 1.5};

    PercussionReader(Examination examination) {
        super(
                examination,
                LungQuantity.GONE,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.TRAPPED,
                LungQuantity.STIFF);
    }

    @Override
    public String name() {
        return "percussion";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("percussion", zone.note());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "resonant";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double rings = amount(finding);
        return new Appearance(
                "percussion-note",
                List.of(),
                List.of(
                        measure("pitch", between(onlooker, "hertz", rings), "Hz"),
                        measure("falls by 20 dB in", between(onlooker, "ms", rings) * rung(onlooker), "ms"),
                        measure("level", between(onlooker, "db", rings) + onlooker.wall(), "dB")),
                "");
    }

    /** Through a thick wall the note is shorter: duller, equally on both sides. */
    private static double rung(Onlooker onlooker) {
        return Math.pow(10, onlooker.wall() / onlooker.constant("note.wall-db"));
    }

    private static double between(Onlooker onlooker, String what, double rings) {
        int above = 1;
        while (above < AMOUNTS.length - 1 && AMOUNTS[above] < rings) {
            above++;
        }
        double along = (rings - AMOUNTS[above - 1]) / (AMOUNTS[above] - AMOUNTS[above - 1]);
        double low = onlooker.constant("note." + NOTES.get(above - 1) + "." + what);
        double high = onlooker.constant("note." + NOTES.get(above) + "." + what);
        return low + (high - low) * Math.max(0, Math.min(1.2, along));
    }
}

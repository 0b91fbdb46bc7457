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

/** A pleural rub over one zone: creaks in both phases, the breath out mirroring the breath in. */
final class RubReader extends ZoneReader {
    private static final double FIRST = 0.35;
    private static final double LAST = 0.9;

    RubReader(Examination examination) {
        super(examination, LungQuantity.RUB);
    }

    @Override
    public String name() {
        return "rub";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(new LungSounds(zone).rub());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        if (seen(finding).equals("none")) {
            return LungSound.clicks(onlooker, LungSound.Clicks.NONE);
        }
        List<Double> in = new ArrayList<>();
        double count = onlooker.constant("rub.count");
        for (int i = 0; i < count; i++) {
            in.add(FIRST + (LAST - FIRST) * (i + 0.3 * onlooker.own("creak-" + i)) / count);
        }
        return LungSound.clicks(
                onlooker,
                new LungSound.Clicks(
                        in,
                        in.stream().map(share -> 1 - share).toList(),
                        onlooker.constant("rub.hertz"),
                        onlooker.constant("rub.ms"),
                        onlooker.constant("rub.db")));
    }
}

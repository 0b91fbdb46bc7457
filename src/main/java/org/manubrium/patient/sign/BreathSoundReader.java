package org.manubrium.patient.sign;

import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungSounds;
import org.manubrium.patient.lung.LungZone;

/** The sound of the breath itself over one zone. */
final class BreathSoundReader extends ZoneReader {
    BreathSoundReader(Examination examination) {
        super(
                examination,
                LungQuantity.GONE,
                LungQuantity.BLOCKED,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.TRAPPED,
                LungQuantity.NARROW);
    }

    @Override
    public String name() {
        return "breath-sound";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(new LungSounds(zone).breath());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "vesicular";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return LungSound.breath(onlooker, seen(finding));
    }
}

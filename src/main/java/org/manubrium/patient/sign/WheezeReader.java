package org.manubrium.patient.sign;

import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungSounds;
import org.manubrium.patient.lung.LungZone;

/** Wheeze over one zone. */
final class WheezeReader extends ZoneReader {
    WheezeReader(Examination examination) {
        super(examination, LungQuantity.BLOCKED, LungQuantity.SECRETION, LungQuantity.NARROW);
    }

    @Override
    public String name() {
        return "wheeze";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(new LungSounds(zone).wheeze());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        return LungSound.tones(onlooker, seen(finding));
    }
}

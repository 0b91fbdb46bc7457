package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungZone;

/** The spoken voice through the chest wall: to the ear (resonance) and under the hand (fremitus). */
final class ChestVoiceReader extends ZoneReader {
    private static final double LEAST = 0.01;
    private static final double MICROMETRES = 20;

    ChestVoiceReader(Examination examination) {
        super(
                examination,
                LungQuantity.GONE,
                LungQuantity.BLOCKED,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID,
                LungQuantity.TRAPPED,
                LungQuantity.STIFF);
    }

    @Override
    public String name() {
        return "chest-voice";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded("chest-voice", felt(manoeuvre) ? zone.hum() : zone.voice());
    }

    private static boolean felt(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("fremitus");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "normal";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double carried = Math.max(LEAST, amount(finding));
        return felt(onlooker.manoeuvre())
                ? new Appearance(
                        "hum-felt",
                        List.of(),
                        List.of(measure("trembling under the hand", MICROMETRES * carried, "µm")),
                        "")
                : heard(onlooker, carried);
    }

    private static Appearance heard(Onlooker onlooker, double carried) {
        double low = onlooker.constant("voice.low-hertz");
        double solid = Math.max(0, Math.min(1, (carried - 1.1) / 0.6));
        double top = low * Math.pow(onlooker.constant("voice.high-hertz") / low, solid);
        double level = onlooker.constant("voice.db") + 20 * Math.log10(carried);
        return new Appearance(
                "voice-heard", List.of(), List.of(measure("level", level, "dB"), measure("up to", top, "Hz")), "");
    }
}

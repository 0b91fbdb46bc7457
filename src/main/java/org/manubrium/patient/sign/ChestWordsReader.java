package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Finding;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.LungSounds;
import org.manubrium.patient.lung.LungZone;

/** Whether the high notes of speech come through the chest: whispered words, and a spoken E. */
final class ChestWordsReader extends ZoneReader {
    ChestWordsReader(Examination examination) {
        super(
                examination,
                LungQuantity.GONE,
                LungQuantity.BLOCKED,
                LungQuantity.FLUID,
                LungQuantity.GAS,
                LungQuantity.SOLID);
    }

    @Override
    public String name() {
        return "chest-words";
    }

    @Override
    Finding find(LungZone zone, Manoeuvre manoeuvre, Probe probe) {
        boolean clear = new LungSounds(zone).clearWords();
        return new Finding.Seen(clear ? (vowel(manoeuvre) ? "a" : "clear") : usual(manoeuvre));
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return vowel(manoeuvre) ? "e" : "muffled";
    }

    private static boolean vowel(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("e");
    }

    /** A whisper is noise between two edges; a vowel is two bands. */
    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        boolean clear = !seen(finding).equals(usual(onlooker.manoeuvre()));
        double level = onlooker.constant("voice.db") + (clear ? onlooker.constant("voice.solid-db") : 0);
        if (!vowel(onlooker.manoeuvre())) {
            double top = onlooker.constant(clear ? "voice.high-hertz" : "voice.low-hertz");
            return new Appearance(
                    "whisper-heard",
                    List.of(),
                    List.of(measure("level", level - (clear ? 4 : 14), "dB"), measure("up to", top, "Hz")),
                    "");
        }
        return new Appearance(
                "vowel-heard",
                List.of(),
                List.of(
                        measure("level", level, "dB"),
                        measure("lower band", clear ? 550 : 280, "Hz"),
                        measure("upper band", clear ? 1000 : 2250, "Hz"),
                        measure("upper band against the lower", clear ? -3 : -24, "dB")),
                "");
    }
}

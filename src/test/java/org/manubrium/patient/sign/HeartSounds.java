package org.manubrium.patient.sign;

import org.manubrium.examination.Probe;
import org.manubrium.patient.heart.ExtraSounds;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.ValveSounds;

/** What the tests ask of a heart that no single sign tells. */
final class HeartSounds {
    private HeartSounds() {}

    static Heart heart(Bedside patient) {
        return HeartReader.heart(
                patient.body(), new Probe(Bedside.item("first-sound"), "lying-45", java.util.Map.of()));
    }

    /** The gap between the parts of the second sound, ms, in the breath out and in the breath in. */
    record Splits(double out, double in) {}

    static Splits splits(Bedside patient) {
        Heart heart = heart(patient);
        Load in = Load.of(patient.body().physiology(), "breath-in");
        return new Splits(new ValveSounds(heart).split(), new ValveSounds(heart.under(in)).split());
    }

    /** From the second sound to the opening of the mitral valve, ms. */
    static double after(Bedside patient) {
        return new ExtraSounds(heart(patient)).snapAfter();
    }
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sounds of the chest as the page makes them from what the server tells, rendered to memory and measured. */
class ChestSoundTest {
    private static final String BASE = ":right@lower-back";
    private static Renderer renderer;

    @BeforeAll
    static void open() {
        renderer = new Renderer();
    }

    @AfterAll
    static void close() {
        renderer.close();
    }

    private static Sound render(String module, String builder, Bedside patient, String item, double seconds) {
        return renderer.render(module, builder, patient.show(item, Map.of()), seconds);
    }

    private static Sound breath(Bedside patient, String item) {
        return render("breath-audio.js", "breathSound", patient, item, 5);
    }

    private static Sound note(String said) {
        return render(
                "percussion-audio.js", "percussionSound", ChestPatients.with(said), "percussion-back" + BASE, 0.8);
    }

    private static double measure(Bedside patient, String item, String label) {
        return patient.show(item, Map.of()).measures().stream()
                .filter(measure -> measure.label().equals(label))
                .findFirst()
                .orElseThrow()
                .amount();
    }

    /** What the crackles add to the breath on which they ride. */
    private static Sound crackles(Bedside patient) {
        Bedside healthy = new Bedside(patient.body().healthy());
        return breath(patient, "crackles-back" + BASE).minus(breath(healthy, "crackles-back" + BASE));
    }

    /** The moments at which the crackles begin, s. */
    private static List<Double> begins(Sound crackles) {
        List<Double> begins = new ArrayList<>();
        double quietSince = 0;
        for (double t = 0; t < 4.9; t += 0.001) {
            boolean loud = crackles.power(t, t + 0.001) > 1e-5;
            if (loud && t - quietSince > 0.006) {
                begins.add(t);
            }
            quietSince = loud ? t : quietSince;
        }
        return begins;
    }

    /** Nath & Capel 1974; Sci Rep 2021 11:17186: fine, about 650 Hz, late. */
    @Test
    void cracklesOfHeartFailureAndFibrosisLieInTheLastThirdOfTheBreathIn() {
        for (String said : List.of("pulmonary-oedema", "pulmonary-fibrosis")) {
            Bedside patient = ChestPatients.with(said);
            double in = measure(patient, "crackles-back" + BASE, "breath in lasts") / 1000;
            Sound crackles = crackles(patient);

            assertThat(crackles.energy(in * 2 / 3, in + 0.05)).as(said).isGreaterThan(0.95 * crackles.energy(0, 4.9));
            assertThat(begins(crackles)).hasSizeGreaterThan(5);
            assertThat(pitch(crackles)).isCloseTo(650, within(100.0));
        }
    }

    /** Nath & Capel 1974 and 1980: airway disease, early and coarse, about 350 Hz. */
    @Test
    void cracklesOfAirwayDiseaseComeEarlyInTheBreathInAndAreLower() {
        Bedside patient = ChestPatients.with("chronic-bronchitis");
        double in = measure(patient, "crackles-back" + BASE, "breath in lasts") / 1000;
        Sound crackles = crackles(patient);

        assertThat(crackles.energy(0, in * 0.4)).isGreaterThan(0.95 * crackles.energy(0, 4.9));
        assertThat(pitch(crackles)).isCloseTo(350, within(60.0));
    }

    /** The mean of the pitches of the single crackles. */
    private static double pitch(Sound crackles) {
        return begins(crackles).stream()
                .mapToDouble(at -> crackles.pitch(at, at + 0.012, 150, 1500))
                .average()
                .orElseThrow();
    }

    /** Gavriely 1995: breathing in is 10 to 11 dB louder than breathing out at equal flow. */
    @Test
    void vesicularBreathingIsLouderAndLongerInThanOut() {
        Bedside patient = Bedside.healthy(40);
        Sound sound = breath(patient, "breath-sounds-back" + BASE);
        double in = measure(patient, "breath-sounds-back" + BASE, "breath in lasts") / 1000;

        assertThat(sound.decibel(in * 0.35, in * 0.65) - sound.decibel(in + 0.3, in + 0.55))
                .isCloseTo(10.5, within(3.0));
        assertThat(sound.decibel(in + 1.2, in + 1.7)).isLessThan(-70);
    }

    /** ATS nomenclature: a gap, the breath out as long as the breath in and louder, with high notes. */
    @Test
    void bronchialBreathingHasAGapAndHighNotesAndALongBreathOut() {
        Bedside solid = ChestPatients.with("lobar-pneumonia right");
        Sound bronchial = breath(solid, "breath-sounds-back" + BASE);
        Sound vesicular = breath(Bedside.healthy(55), "breath-sounds-back" + BASE);
        double in = measure(solid, "breath-sounds-back" + BASE, "breath in lasts") / 1000;
        double gap = measure(solid, "breath-sounds-back" + BASE, "gap") / 1000;

        assertThat(bronchial.decibel(in + 0.03, in + gap - 0.03)).isLessThan(bronchial.decibel(0.3, in - 0.3) - 25);
        assertThat(bronchial.decibel(in + gap + 0.2, in + gap + 1.2)).isGreaterThan(bronchial.decibel(0.1, in - 0.1));
        assertThat(bronchial.shareAbove(600, 0.3, 0.9)).isGreaterThan(3 * vesicular.shareAbove(600, 0.3, 0.9));
    }

    @Test
    void nothingIsHeardThroughAFullLayerOfFluid() {
        Sound fluid = breath(ChestPatients.with("pleural-effusion right"), "breath-sounds-back" + BASE);
        Sound healthy = breath(Bedside.healthy(55), "breath-sounds-back" + BASE);

        assertThat(fluid.decibel(0.3, 1.2)).isLessThan(healthy.decibel(0.3, 1.2) - 25);
    }

    /** Sci Rep 2021 and the ATS: a dominant pitch of about 400 Hz, longer than 80 ms, mostly in the breath out. */
    @Test
    void wheezeSingsNearFourHundredHertzMostlyInTheBreathOut() {
        Bedside patient = ChestPatients.with("asthma");
        Sound sound = breath(patient, "wheeze-back" + BASE);
        double in = measure(patient, "wheeze-back" + BASE, "breath in lasts") / 1000;

        assertThat(sound.pitch(in + 0.3, in + 0.8, 350, 480)).isCloseTo(400, within(40.0));
        assertThat(sound.energy(in, 4.9)).isGreaterThan(3 * sound.energy(0, in));
        assertThat(sound.decibel(in + 0.5, in + 0.58)).isGreaterThan(-40);
    }

    /** Textbooks of physical diagnosis: dull is short and higher, stony dull shortest, hyper-resonant low and long. */
    @Test
    void percussionNotesFallInTheirOrder() {
        Sound stony = note("pleural-effusion right");
        Sound dull = note("lobar-pneumonia right");
        Sound resonant = note("pleural-effusion left");
        Sound booming = note("tension-pneumothorax right");

        assertThat(stony.fallsBy20Decibel()).isLessThan(dull.fallsBy20Decibel());
        assertThat(dull.fallsBy20Decibel()).isLessThan(resonant.fallsBy20Decibel() - 0.04);
        assertThat(booming.fallsBy20Decibel()).isGreaterThan(resonant.fallsBy20Decibel() + 0.05);
        assertThat(booming.pitch(0.01, 0.2, 60, 400)).isBetween(70.0, 120.0);
        assertThat(resonant.pitch(0.01, 0.15, 60, 400)).isBetween(100.0, 160.0);
        assertThat(stony.decibel(0, 0.1)).isLessThan(dull.decibel(0, 0.1));
        assertThat(dull.decibel(0, 0.1)).isLessThan(resonant.decibel(0, 0.1));
    }

    /** Kompis 1997: over solid lung less is lost above 300 Hz. */
    @Test
    void theVoiceComesThroughSolidLungWithItsHighNotes() {
        Sound solid = render(
                "voice-audio.js",
                "spokenSound",
                ChestPatients.with("lobar-pneumonia right"),
                "vocal-resonance-back" + BASE,
                1.5);
        Sound healthy =
                render("voice-audio.js", "spokenSound", Bedside.healthy(55), "vocal-resonance-back" + BASE, 1.5);

        assertThat(solid.shareAbove(500, 0.05, 1.1)).isGreaterThan(2 * healthy.shareAbove(500, 0.05, 1.1));
        assertThat(solid.decibel(0.05, 1)).isGreaterThan(healthy.decibel(0.05, 1) + 3);
    }
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;

/** The sounds of the heart as the page makes them from what the server tells, rendered to memory and measured. */
class HeartSoundTest {
    private static Renderer renderer;

    @BeforeAll
    static void open() {
        renderer = new Renderer();
    }

    @AfterAll
    static void close() {
        renderer.close();
    }

    /** A sound and the moments of its first sounds and of the second sounds after them, s. */
    private record Heard(Sound sound, List<Double> first, List<Double> second) {

        /** Energy between two shares of systole, or of diastole, over the middle beats. */
        double systole(double from, double to) {
            double energy = 0;
            for (int i = 1; i < 3; i++) {
                double length = second.get(i) - first.get(i);
                energy += sound.energy(first.get(i) + from * length, first.get(i) + to * length);
            }
            return energy;
        }

        double diastole(double from, double to) {
            double energy = 0;
            for (int i = 1; i < 3; i++) {
                double length = first.get(i + 1) - second.get(i);
                energy += sound.energy(second.get(i) + from * length, second.get(i) + to * length);
            }
            return energy;
        }
    }

    private static Heard heard(Bedside patient, String item, Map<String, String> technique) {
        Appearance shown = patient.show(item, technique);
        Appearance.Curve thumps = shown.curves().get(1);
        List<Double> tall = new ArrayList<>();
        for (int i = 0; i < thumps.samples().size(); i++) {
            double at = i * thumps.stepMs() / 1000;
            if (thumps.samples().get(i) > 0.12 && (tall.isEmpty() || at - tall.get(tall.size() - 1) > 0.11)) {
                tall.add(at);
            }
        }
        List<Double> first = new ArrayList<>();
        List<Double> second = new ArrayList<>();
        for (int i = 0; i + 1 < tall.size(); i++) {
            if (i == 0 || tall.get(i) - tall.get(i - 1) > 0.4) {
                first.add(tall.get(i));
                second.add(tall.get(i + 1));
            }
        }
        return new Heard(renderer.render("heart-audio.js", "heartAudio", shown, 4.8), first, second);
    }

    private static Heard at(String condition, String place) {
        Bedside patient = Bedside.healthy(50);
        return heard(
                condition.isEmpty() ? patient : patient.condition(condition, Side.NONE),
                "murmur-timing@" + place,
                Map.of());
    }

    /** Textbooks of auscultation: two sounds a beat and silence between them in health. */
    @Test
    void aHealthyHeartIsSilentBetweenItsSounds() {
        Heard healthy = at("", "mitral");
        double quiet = healthy.systole(0.5, 0.9) + healthy.diastole(0.4, 0.9);

        assertThat(healthy.systole(0, 0.4)).isGreaterThan(300 * quiet);
        assertThat(healthy.sound().pitch(healthy.first().get(1), healthy.first().get(1) + 0.08, 30, 300))
                .isBetween(30.0, 150.0);
    }

    /** Biomed Res Int 2020 Table 1 and texts: systolic murmurs lie between the first and the second sound. */
    @Test
    void systolicMurmursLieInSystole() {
        for (List<String> said : List.of(
                List.of("aortic-stenosis", "aortic"),
                List.of("mitral-regurgitation", "mitral"),
                List.of("ventricular-septal-defect", "tricuspid"))) {
            Heard heard = at(said.get(0), said.get(1));

            assertThat(heard.systole(0.35, 0.85)).as(said.get(0)).isGreaterThan(50 * heard.diastole(0.4, 0.9));
        }
    }

    /** ACC/AHA 2006; Choudhry & Etchells 1999: diastolic murmurs lie after the second sound. */
    @Test
    void diastolicMurmursLieInDiastole() {
        Heard leak = heard(
                Bedside.healthy(50).condition("aortic-regurgitation", Side.NONE),
                "sternal-edge-leaning-forward",
                Map.of());
        Heard rumble =
                heard(Bedside.healthy(50).condition("mitral-stenosis", Side.NONE), "apex-on-the-left-side", Map.of());

        assertThat(leak.diastole(0.15, 0.5)).isGreaterThan(3 * leak.diastole(0.55, 0.9));
        assertThat(leak.diastole(0.15, 0.5)).isGreaterThan(leak.systole(0.4, 0.85));
        assertThat(rumble.diastole(0.35, 0.95)).isGreaterThan(20 * rumble.systole(0.4, 0.85));
        assertThat(rumble.diastole(0.85, 0.97)).isGreaterThan(rumble.diastole(0.68, 0.8));
    }

    /** Etchells 1997: a peak in the middle or late goes with a tight valve, an early one with sclerosis. */
    @Test
    void theMurmurOfATightValvePeaksLaterThanThatOfARoughOne() {
        Heard tight = at("aortic-stenosis", "aortic");
        Heard rough = at("aortic-sclerosis", "aortic");

        assertThat(tight.systole(0.5, 0.9)).isGreaterThan(1.5 * tight.systole(0.2, 0.45));
        assertThat(rough.systole(0.55, 0.9)).isLessThan(rough.systole(0.2, 0.5));
    }

    /** Am Fam Physician 2011: machinery, over the second sound. */
    @Test
    void aDuctSoundsThroughTheWholeBeat() {
        Heard duct = at("patent-duct", "infraclavicular");

        assertThat(duct.systole(0.5, 0.9)).isGreaterThan(0.1 * duct.diastole(0.2, 0.5));
        assertThat(duct.diastole(0.2, 0.5)).isGreaterThan(duct.diastole(0.7, 1) * 2);
        assertThat(duct.diastole(0.7, 0.9))
                .isGreaterThan(100 * at("", "infraclavicular").diastole(0.7, 0.9));
    }

    /** Harrison's Manual: a rumble is low and needs the bell; a leak of the aortic valve is high. */
    @Test
    void aRumbleIsLowAndLostUnderTheDiaphragmALeakIsHigh() {
        Bedside narrow = Bedside.healthy(50).condition("mitral-stenosis", Side.NONE);
        Heard bell = heard(narrow, "apex-on-the-left-side", Map.of());
        Heard diaphragm = heard(narrow, "apex-on-the-left-side", Map.of("heart-piece-bell-first", "diaphragm"));
        Heard leak = heard(
                Bedside.healthy(50).condition("aortic-regurgitation", Side.NONE),
                "sternal-edge-leaning-forward",
                Map.of());
        double gap = bell.second().get(1) + 0.2;

        assertThat(bell.diastole(0.35, 0.8)).isGreaterThan(4 * diaphragm.diastole(0.35, 0.8));
        assertThat(bell.sound().shareAbove(200, gap, gap + 0.25)).isLessThan(0.2);
        assertThat(leak.sound()
                        .shareAbove(
                                200, leak.second().get(1) + 0.1, leak.second().get(1) + 0.3))
                .isGreaterThan(0.6);
    }

    /** McGee 4th ed. ch. 40: the pulmonary part moves away as the breath goes in. */
    @Test
    void theTwoPartsOfTheSecondSoundAreToldApartOnBreathingIn() {
        Bedside person = Bedside.healthy(50);
        List<Double> in = person.curve("second-sound-split", "thumps", Map.of("heart-breath-in-and-out", "held-in"));
        List<Double> out = person.curve("second-sound-split", "thumps", Map.of("heart-breath-in-and-out", "held-out"));

        assertThat(gap(in)).isCloseTo(45, within(7.0));
        assertThat(gap(out)).isLessThanOrEqualTo(20);
    }

    /** From the tallest thump of the second half of a beat to the next one, ms. */
    /** Common practice, no source: each first sound has its second, and the rhythm runs on when the patient starts to grip. */
    @Test
    void noBeatIsCutWhereTheClipTurnsToGripping() {
        List<Double> thumps = Bedside.healthy(50).curve("murmur-on-gripping", "thumps", Map.of());
        List<Double> heard = new ArrayList<>();
        for (int i = 0; i < thumps.size(); i++) {
            double at = i * HeartClip.FINE_MS;
            if (thumps.get(i) > 0.05 && (heard.isEmpty() || at - heard.get(heard.size() - 1) > 110)) {
                heard.add(at);
            }
        }

        assertThat(heard.size() % 2).isZero();
        for (int beat = 0; beat + 3 < heard.size(); beat += 2) {
            double systole = heard.get(beat + 1) - heard.get(beat);
            double whole = heard.get(beat + 2) - heard.get(beat);
            assertThat(systole).as("at %s ms", heard.get(beat)).isBetween(220.0, 400.0);
            assertThat(whole).as("at %s ms", heard.get(beat)).isBetween(500.0, 1100.0);
        }
    }

    private static double gap(List<Double> thumps) {
        int first = 0;
        while (thumps.get(first) < 0.3) {
            first++;
        }
        int second = first + 50;
        while (thumps.get(second) < 0.1) {
            second++;
        }
        int third = second + 1;
        while (thumps.get(third) < 0.1) {
            third++;
        }
        return (third - second) * HeartClip.FINE_MS;
    }

    /** Lembo 1988: on straining the murmur of obstruction below the valve grows, that of aortic stenosis shrinks. */
    @Test
    void strainingIsHeardInTheSecondHalfOfTheClip() {
        assertThat(grows("obstructive-cardiomyopathy", "tricuspid")).isGreaterThan(1.5);
        assertThat(grows("aortic-stenosis", "aortic")).isLessThan(0.6);
    }

    private static double grows(String condition, String area) {
        Appearance shown = Bedside.healthy(50)
                .condition(condition, Side.NONE)
                .show("murmur-on-straining", Map.of("heart-area", area));
        Sound sound = renderer.render("heart-audio.js", "heartAudio", shown, 6);
        return sound.energy(3.2, 5.9) / sound.energy(0.2, 2.9);
    }
}

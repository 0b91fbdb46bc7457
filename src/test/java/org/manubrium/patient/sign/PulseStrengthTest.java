package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;

/** The pulses of the limbs follow what the heart sends out (pulse volume: textbook of physical diagnosis, secondary). */
class PulseStrengthTest {
    private static final Bedside HEALTHY = Bedside.healthy(60);
    private static final List<String> PULSES = List.of(
            "arm-pulses:right@radial",
            "arm-pulses:left@brachial",
            "groin-pulse:left@femoral",
            "leg-pulses:right@dorsalis-pedis",
            "leg-pulses:left@posterior-tibial");

    @ParameterizedTest
    @ValueSource(strings = {"tamponade", "blood-loss", "severe-stenosis", "weak-ventricle"})
    void aSmallStrokeThinsEveryPulseAlike(String what) {
        Bedside patient = ill(what);

        assertThat(patient.word("pulse-volume")).isEqualTo("reduced");
        for (String pulse : PULSES) {
            assertThat(patient.word(pulse)).as(pulse).isEqualTo("1");
            assertThat(patient.sign(pulse).normal()).contains(false);
        }
    }

    private static Bedside ill(String what) {
        return switch (what) {
            case "tamponade" ->
                HEALTHY.shift("pericardial-fluid", 1)
                        .shift("systolic-lying", -30)
                        .shift("diastolic-lying", -4);
            case "blood-loss" -> HEALTHY.shift("blood-loss", 1).shift("systolic-lying", -25);
            case "severe-stenosis" ->
                HEALTHY.shift("aortic-valve-area", -2.9)
                        .shift("systolic-lying", -20)
                        .shift("diastolic-lying", 2);
            default -> HEALTHY.shift("left-ventricle-contraction", -0.4).shift("systolic-lying", -15);
        };
    }

    @Test
    void aLeakOfTheAorticValveMakesEveryPulseBound() {
        Bedside patient =
                HEALTHY.shift("aortic-leak", 0.5).shift("systolic-lying", 25).shift("diastolic-lying", -28);

        assertThat(patient.word("pulse-volume")).isEqualTo("bounding");
        PULSES.forEach(pulse -> assertThat(patient.word(pulse)).as(pulse).isEqualTo("3"));
    }

    @Test
    void aNarrowingStillTakesItsOwnShareOfAThinPulse() {
        Bedside patient = ill("tamponade").shift("artery.left.radial.narrow", 0.5);

        assertThat(patient.word("arm-pulses:left@radial")).isEqualTo("0");
        assertThat(patient.word("arm-pulses:right@radial")).isEqualTo("1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cardiac-tamponade", "aortic-stenosis", "aortic-regurgitation"})
    void theTabledConditionsOfTheHeartShowAtTheLimbs(String condition) {
        Bedside patient = HEALTHY.condition(condition, Side.NONE);
        String volume = patient.word("pulse-volume");

        assertThat(patient.word("arm-pulses:right@radial"))
                .isEqualTo(volume.equals("reduced") ? "1" : volume.equals("bounding") ? "3" : "2");
    }
}

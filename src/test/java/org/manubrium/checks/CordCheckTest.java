package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.checks.Patient.on;
import static org.manubrium.checks.Patient.with;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;

/** The cord and the brainstem. */
class CordCheckTest {
    private static final String[] ARM_POINTS = {"c5-outer-elbow", "c6-thumb", "c8-little-finger", "t1-inner-elbow"};
    private static final String[] LEG_POINTS = {
        "l2-inner-thigh", "l3-inner-knee", "l5-dorsum-of-foot", "s1-lateral-heel"
    };

    private static String[] at(String kind, String side, String... points) {
        return Arrays.stream(points).map(p -> kind + ":" + side + "@" + p).toArray(String[]::new);
    }

    /**
     * X17: secondary text on the supinator reflex; abstract on the inverted supinator reflex in the asymptomatic. Seen by
     * reference; composite. The answering fingers and the jaw are not among the signs here.
     */
    @Test
    void x17CordAtC5And6TakesItsOwnReflexesAndRaisesThoseBelow() {
        Patient patient = with("spinal cord C5-C6");
        for (String side : List.of("right", "left")) {
            patient.lost("biceps-reflex:" + side, "brachioradialis-reflex:" + side);
            patient.brisk("triceps-reflex:" + side, "knee-reflex:" + side, "ankle-reflex:" + side);
        }
    }

    /** X18: pediatric emergency medicine text, cord syndromes. Seen by reference; composite. */
    @Test
    void x18HalfOfTheCordAtT8() {
        Patient patient = with("spinal cord T8 right half");
        patient.weak("hip-flexion:right", "knee-extension:right", "ankle-dorsiflexion:right");
        patient.brisk("knee-reflex:right", "ankle-reflex:right");
        assertThat(patient.read("plantar-response:right")).isEqualTo("extensor");
        patient.lost(at("vibration", "right", LEG_POINTS));
        patient.kept(at("vibration", "left", LEG_POINTS));
        for (String kind : List.of("pin", "temperature")) {
            patient.kept(at(kind, "left", "t6-xiphisternum", "t7-quarter-to-navel", "t8-halfway-to-navel"));
            patient.lost(at(kind, "left", "t11-below-navel", "t12-groin"));
            patient.lost(at(kind, "left", LEG_POINTS));
            patient.kept(at(kind, "right", LEG_POINTS));
        }
        patient.kept("knee-reflex:left", "ankle-reflex:left", "hip-flexion:left", "ankle-dorsiflexion:left");
        for (String side : List.of("right", "left")) {
            patient.kept("elbow-flexion:" + side, "finger-flexion:" + side, "biceps-reflex:" + side);
            patient.kept(at("pin", side, ARM_POINTS));
        }
    }

    /** X19: spinal cord syndromes notes (secondary, 2010). Seen; composite. */
    @Test
    void x19CavityOfTheNeckTakesACapeOfPinAndTemperature() {
        Patient patient = with("spinal cord C5-T1 central");
        for (String side : List.of("right", "left")) {
            for (String kind : List.of("pin", "temperature")) {
                patient.weak(at(kind, side, ARM_POINTS));
                patient.kept(at(kind, side, LEG_POINTS));
            }
            patient.kept(at("vibration", side, ARM_POINTS));
            patient.weak("biceps-reflex:" + side, "triceps-reflex:" + side);
            patient.kept("knee-reflex:" + side, "ankle-reflex:" + side);
        }
    }

    /** X20: pediatric emergency medicine text, cord syndromes. Seen by reference; composite. */
    @Test
    void x20FrontOfTheCordTakesPowerAndPinAndLeavesVibrationAndPosition() {
        Patient patient = with("spinal cord T8 anterior");
        for (String side : List.of("right", "left")) {
            patient.weak("hip-flexion:" + side, "ankle-dorsiflexion:" + side);
            patient.lost(at("pin", side, LEG_POINTS));
            patient.lost(at("temperature", side, LEG_POINTS));
            patient.kept(at("vibration", side, LEG_POINTS));
            patient.kept(on("joint-position", Side.of(side).orElseThrow()));
        }
    }

    /** X21: spinal cord syndromes notes (secondary, 2010). Seen; composite. Standing with closed eyes is no sign here yet. */
    @Test
    void x21BackOfTheCordTakesVibrationAndPositionAndLeavesPinAndPower() {
        Patient patient = with("spinal cord T8 posterior");
        for (String side : List.of("right", "left")) {
            patient.lost(at("vibration", side, LEG_POINTS));
            patient.lost(at("joint-position", side, "l3-inner-knee", "sole", "heel"));
            patient.kept(on("pin", Side.of(side).orElseThrow()));
            patient.kept("hip-flexion:" + side, "ankle-dorsiflexion:" + side);
        }
    }

    /**
     * X22: lateral medullary syndrome table (secondary). Seen by reference. The face, the palate and the limbs' coordination
     * are not among the signs here.
     */
    @Test
    void x22SideOfTheMedullaTakesPinOfTheOtherHalfOfTheBodyAndKeepsPower() {
        Patient patient = with("lateral medulla right");
        patient.lost(at("pin", "left", ARM_POINTS));
        patient.lost(at("pin", "left", LEG_POINTS));
        patient.kept(at("pin", "right", ARM_POINTS));
        patient.kept("elbow-extension:left", "hip-flexion:left", "elbow-extension:right", "hip-flexion:right");
    }
}

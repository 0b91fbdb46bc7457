package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.checks.Patient.system;
import static org.manubrium.checks.Patient.with;

import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;

/** Nerve roots. */
class RootCheckTest {
    /**
     * X01: McGee, Evidence-Based Physical Diagnosis, 4th ed., ch. 64; ISNCSCI key sensory points (2008) and key muscles.
     * Seen; composite.
     */
    @Test
    void x01LeftC7TakesTricepsReflexMiddleFingerPinAndElbowExtension() {
        Patient patient = with("root C7 left");
        patient.weak("triceps-reflex:left", "elbow-extension:left");
        patient.lost("pin:left@c7-middle-finger");
        patient.kept("biceps-reflex:left", "brachioradialis-reflex:left");
        patient.kept(system("reflexes", Side.RIGHT));
    }

    /** X02: as X01. */
    @Test
    void x02LeftC6TakesBicepsOrBrachioradialisReflexThumbPinAndWristExtension() {
        Patient patient = with("root C6 left");
        patient.weak("biceps-reflex:left", "brachioradialis-reflex:left", "wrist-extension:left");
        patient.lost("pin:left@c6-thumb");
        patient.kept("triceps-reflex:left");
    }

    /** X03: McGee 4th ed., ch. 64. Seen; composite. */
    @Test
    void x03C5TakesElbowFlexionAndShoulderAbduction() {
        for (String side : new String[] {"right", "left"}) {
            Patient patient = with("root C5 " + side);
            patient.weak("elbow-flexion:" + side, "shoulder-abduction:" + side);
            patient.kept("triceps-reflex:" + side, "elbow-extension:" + side);
        }
    }

    /** X04: McGee 4th ed., ch. 64; ISNCSCI. Seen; composite. */
    @Test
    void x04C8TakesFingerFlexionAndTheLittleFinger() {
        Patient patient = with("root C8 right");
        patient.weak("finger-flexion:right");
        patient.lost("pin:right@c8-little-finger");
        patient.kept("biceps-reflex:right", "brachioradialis-reflex:right");
        assertThat(patient.grade("triceps-reflex:right"))
                .as("at most one grade down")
                .isGreaterThanOrEqualTo(Patient.healthy().grade("triceps-reflex:right") - 1);
    }

    /** X05: McGee 4th ed., ch. 64; ISNCSCI key sensory points (2008). Seen; composite. */
    @Test
    void x05L4TakesKneeReflexKneeExtensionDorsiflexionAndTheInnerAnkle() {
        Patient patient = with("root L4 left");
        patient.weak("knee-reflex:left", "knee-extension:left", "ankle-dorsiflexion:left");
        patient.lost("pin:left@l4-inner-ankle");
        patient.kept("ankle-reflex:left");
    }

    /** X06: McGee 4th ed., ch. 64; Esene 2012, Surg Neurol Int 3:104; ISNCSCI. Seen by reference; composite. */
    @Test
    void x06L5LeavesKneeAndAnkleReflexesAndTakesTheMedialHamstringReflexAndTheBigToe() {
        Patient patient = with("root L5 right");
        patient.kept("knee-reflex:right", "ankle-reflex:right");
        patient.weak("medial-hamstring-reflex:right", "big-toe-extension:right");
        patient.lost("pin:right@l5-dorsum-of-foot");
    }

    /** X07: McGee 4th ed., ch. 64; ISNCSCI. Seen; composite. */
    @Test
    void x07S1TakesTheAnkleReflexTheLateralHeelAndPlantarFlexion() {
        Patient patient = with("root S1 left");
        patient.weak("ankle-reflex:left", "ankle-plantar-flexion:left");
        patient.lost("pin:left@s1-lateral-heel");
        patient.kept("knee-reflex:left");
    }

    /** X09: McGee 5th ed., appendix of likelihood ratios; Esene 2012. Seen by reference. The ratio itself is no sign. */
    @Test
    void x09TheFootDropOfL5ComesWithWeakInversionAndHipAbduction() {
        Patient patient = with("root L5 left");
        patient.weak("ankle-dorsiflexion:left", "foot-inversion:left", "hip-abduction:left");
    }
}

package org.manubrium.checks;

import static org.manubrium.checks.Patient.healthy;
import static org.manubrium.checks.Patient.system;
import static org.manubrium.checks.Patient.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;

/** Single nerves, and many. */
class NerveCheckTest {
    /** X08: Esene 2012, Surg Neurol Int 3:104; McGee 5th ed., appendix of likelihood ratios. Seen by reference. */
    @Test
    void x08CommonFibularPalsyDropsTheFootAndKeepsReflexesInversionHipAndCalf() {
        Patient patient = with("common fibular nerve left at fibular neck");
        patient.weak("ankle-dorsiflexion:left", "foot-eversion:left");
        patient.kept("knee-reflex:left", "ankle-reflex:left", "medial-hamstring-reflex:left");
        patient.kept("foot-inversion:left", "hip-abduction:left", "ankle-plantar-flexion:left");
    }

    /**
     * X23: Curr Neurol Neurosci Rep 2014, review of diabetic neuropathies (stocking loss, ankle reflexes); knee reflexes by
     * inference. Seen by reference; composite. The fibres that die back are the ends of the long nerves of both feet.
     */
    @Test
    void x23LossOfTheLongestNervesTakesTheStockingAndTheAnkleReflexesAlone() {
        Patient patient = healthy();
        for (String end : List.of(
                "sural nerve both",
                "saphenous nerve both",
                "superficial fibular nerve both",
                "deep fibular nerve both at ankle",
                "tibial nerve both at knee")) {
            patient = patient.and(end, 1, "3 years");
        }
        for (String side : List.of("right", "left")) {
            for (String kind : List.of("pin", "light-touch", "vibration")) {
                String at = kind + ":" + side + "@";
                patient.lost(at + "l4-inner-ankle", at + "l5-dorsum-of-foot", at + "s1-lateral-heel");
                patient.kept(at + "c6-thumb", at + "c8-little-finger", at + "l3-inner-knee", at + "l2-inner-thigh");
            }
            patient.lost("ankle-reflex:" + side);
            patient.kept("knee-reflex:" + side);
        }
    }

    /** X24: D'Arcy & McGee 2000, JAMA 283:3110. Seen by reference. */
    @Test
    void x24CarpalTunnelTakesIndexAndThumbAbductionAndSparesTheThenarSkinAndAllReflexes() {
        Patient patient = with("carpal tunnel right");
        patient.lost("pin:right@index-fingertip");
        patient.weak("thumb-abduction:right");
        patient.kept("pin:right@thenar-eminence", "pin:right@little-fingertip");
        patient.kept(system("reflexes", Side.RIGHT));
    }
}

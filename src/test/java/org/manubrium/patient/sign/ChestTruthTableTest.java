package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;

/** The table of physical findings that textbooks give for each state of the lung (McMaster Textbook, unless said). */
class ChestTruthTableTest {
    /** Read at the base behind, or over the upper front where the condition lies there; trachea felt from the ill side. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "lobar-pneumonia right, central|toward, dull, bronchial, increased, increased",
        "lobar-pneumonia left, central|toward, dull, bronchial, increased, increased",
        "pleural-effusion right half the side, central, stony-dull, reduced|absent, reduced, reduced|absent",
        "pleural-effusion left whole side, away, stony-dull, reduced|absent, reduced, reduced|absent",
        "pneumothorax right, central, hyper-resonant, reduced|absent, reduced, absent|reduced",
        "tension-pneumothorax left, away, hyper-resonant, absent, absent, absent",
        "lung-collapse right, toward, dull, reduced, reduced, reduced",
        "lung-collapse left whole lung, toward, dull, reduced, reduced, reduced",
        "compression-collapse right, toward|central, dull, bronchial, increased, increased",
        "pneumonectomy right, toward, dull, absent, absent, absent"
    })
    void oneSidedDiseaseReadsAsTheTableSays(
            String said, String trachea, String note, String breath, String resonance, String fremitus) {
        Bedside patient = ChestPatients.with(said);
        String side = said.split(" ")[1];

        assertThat(patient.word("trachea:" + side)).isIn(oneOf(trachea));
        assertThat(patient.word("percussion-back:" + side + "@lower-back")).isIn(oneOf(note));
        assertThat(patient.word("breath-sounds-back:" + side + "@lower-back")).isIn(oneOf(breath));
        assertThat(patient.word("vocal-resonance-back:" + side + "@lower-back")).isIn(oneOf(resonance));
        assertThat(patient.word("tactile-fremitus-back:" + side + "@lower-back"))
                .isIn(oneOf(fremitus));
        assertThat(patient.sign("expansion-back:" + side + "@lower").normal()).contains(false);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "emphysema, hyper-resonant, quiet-long-expiration, reduced, many, none",
        "asthma, resonant|hyper-resonant, long-expiration, normal|reduced, many, none",
        "life-threatening-asthma, resonant|hyper-resonant, absent, normal|reduced, none, none",
        "chronic-bronchitis, resonant, long-expiration, normal, low, early-coarse",
        "pulmonary-fibrosis, resonant|dull, vesicular|reduced, normal, none, late-fine",
        "pulmonary-oedema, resonant, vesicular, normal, none, late-fine",
        "severe-pulmonary-oedema, resonant, vesicular, normal, none, throughout-coarse"
    })
    void diseaseOfBothLungsReadsAlikeOnBothSides(
            String said, String note, String breath, String resonance, String wheeze, String crackles) {
        Bedside patient = ChestPatients.with(said);

        for (String side : List.of("right", "left")) {
            assertThat(patient.word("trachea:" + side)).isEqualTo("central");
            assertThat(patient.word("percussion-back:" + side + "@lower-back")).isIn(oneOf(note));
            assertThat(patient.word("breath-sounds-back:" + side + "@lower-back"))
                    .isIn(oneOf(breath));
            assertThat(patient.word("vocal-resonance-back:" + side + "@lower-back"))
                    .isIn(oneOf(resonance));
            assertThat(patient.word("wheeze-back:" + side + "@lower-back")).isIn(oneOf(wheeze));
            assertThat(patient.word("crackles-back:" + side + "@lower-back")).isIn(oneOf(crackles));
        }
    }

    private static List<String> oneOf(String codes) {
        return List.of(codes.split("\\|"));
    }

    /** Compression keeps the bronchus open, obstruction does not: the same dull lung sounds otherwise. */
    @Test
    void theBronchusDecidesWhatCollapsedLungSoundsLike() {
        assertThat(ChestPatients.with("compression-collapse left").word("whispered-voice-back:left@lower-back"))
                .isEqualTo("clear");
        assertThat(ChestPatients.with("lung-collapse left").word("whispered-voice-back:left@lower-back"))
                .isEqualTo("muffled");
    }

    @Test
    void solidLungWithAnOpenBronchusTurnsEIntoA() {
        Bedside patient = ChestPatients.with("lobar-pneumonia right");

        assertThat(patient.word("spoken-e-back:right@lower-back")).isEqualTo("a");
        assertThat(patient.word("spoken-e-back:left@lower-back")).isEqualTo("e");
    }

    @Test
    void aLobeIsFoundWhereItLies() {
        Bedside upper = ChestPatients.with("lobar-pneumonia right upper lobe");
        Bedside middle = ChestPatients.with("lobar-pneumonia right middle lobe");

        assertThat(upper.word("percussion-front:right@upper-front")).isEqualTo("dull");
        assertThat(upper.word("percussion-front:right@lower-front")).isEqualTo("resonant");
        assertThat(upper.word("percussion-back:right@lower-back")).isEqualTo("resonant");
        assertThat(middle.word("percussion-front:right@lower-front")).isEqualTo("dull");
        assertThat(middle.word("percussion-back:right@lower-back")).isEqualTo("resonant");
    }

    @Test
    void theOtherSideOfAOneSidedDiseaseIsNormal() {
        for (String said : List.of("lobar-pneumonia", "pleural-effusion", "pneumothorax", "lung-collapse")) {
            Bedside patient = ChestPatients.with(said + " right");

            assertThat(patient.system("chest"))
                    .filteredOn(sign -> sign.item().side() == Side.LEFT
                            && !sign.item().place().isEmpty())
                    .allSatisfy(sign -> assertThat(sign.normal())
                            .as(said + " " + sign.item())
                            .contains(true));
        }
    }

    /** Barrel chest, pursed lips and a forced breath out of 4 s or longer go with COPD (Mattos 2009). */
    @Test
    void emphysemaShowsBeforeTheStethoscopeIsTakenOut() {
        Bedside patient = ChestPatients.with("emphysema");

        assertThat(patient.word("chest-shape")).isEqualTo("barrel");
        assertThat(patient.word("pursed-lips")).isEqualTo("pursed");
        assertThat(patient.amount("forced-breath-out")).isGreaterThanOrEqualTo(4);
        assertThat(patient.word("costal-margin:right")).isEqualTo("inwards");
        assertThat(patient.sign("cricosternal-distance").normal()).contains(false);
    }

    @Test
    void aRubIsSilentOnceFluidPartsTheLayers() {
        Bedside dry = ChestPatients.with("pleurisy right");
        Bedside wet = ChestPatients.with("pleural-effusion right", dry, 1);

        assertThat(dry.word("pleural-rub-back:right@lower-back")).isEqualTo("rub");
        assertThat(wet.word("pleural-rub-back:right@lower-back")).isEqualTo("none");
    }

    /** The tumour at the apex takes what lies on it, the root T1 and the sympathetic chain; the chest below is silent. */
    @Test
    void aTumourAtTheApexIsFoundAtTheApexInTheHandAndInThePupil() {
        Bedside patient = ChestPatients.with("apical-tumour left");

        assertThat(patient.word("percussion-front:left@apex")).isEqualTo("dull");
        assertThat(patient.word("percussion-back:left@lower-back")).isEqualTo("resonant");
        assertThat(patient.sign("index-finger-abduction:left").normal()).contains(false);
        assertThat(patient.sign("index-finger-abduction:right").normal()).contains(true);
        assertThat(patient.amount("pupil-size-dark:left")).isLessThan(patient.amount("pupil-size-dark:right"));
    }

    @Test
    void aPartlyBlockedBronchusSingsOneNoteOnItsSideOnly() {
        Bedside patient = ChestPatients.with("bronchial-tumour left");

        assertThat(patient.word("wheeze-back:left@lower-back")).isEqualTo("one");
        assertThat(patient.word("wheeze-back:right@lower-back")).isEqualTo("none");
    }

    @Test
    void patternsOfBreathingFollowTheirDrive() {
        assertThat(ChestPatients.with("ketoacidosis").word("breathing-pattern")).isEqualTo("deep");
        assertThat(ChestPatients.with("slow-circulation").word("breathing-pattern"))
                .isEqualTo("periodic");
        assertThat(ChestPatients.with("failing-breathing-centre").word("breathing-pattern"))
                .isEqualTo("irregular");
        assertThat(ChestPatients.with("opioid-excess").word("breathing-pattern"))
                .isEqualTo("slow");
        assertThat(ChestPatients.with("opioid-excess").amount("breathing-rate")).isLessThan(10);
        assertThat(ChestPatients.with("laryngeal-narrowing").word("breathing-noise"))
                .isEqualTo("stridor");
        assertThat(ChestPatients.with("weak-diaphragm").word("belly-breath")).isEqualTo("in");
        assertThat(ChestPatients.with("asthma").word("breathing-effort")).isNotEqualTo("easy");
    }
}

package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** What an author expects against what the body gives, each problem with its line and its exact text. */
class ExpectedTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final String PATIENT = "patient: {age: 47, sex: female}\n";
    private static final String ROOT = PATIENT + "conditions: [{is: root-compression, level: C7, side: left}]\n";
    private static final String THIRD = PATIENT + "conditions: [{is: third-nerve-compression, side: left}]\n";

    private static List<String> problems(String text) {
        return CaseFile.read(text, "a.yaml", REFERENCE).problems().stream()
                .map(Problem::toString)
                .toList();
    }

    private static List<String> problems(String body, String... expected) {
        return problems(body + "expected:\n  - {" + String.join("}\n  - {", expected) + "}\n");
    }

    @Test
    void whatTheBodyBearsOutIsNoProblem() {
        assertThat(problems(
                        ROOT,
                        "manoeuvre: triceps-reflex, side: left, reading: \"1\"",
                        "manoeuvre: triceps-reflex, side: right, reading: normal",
                        "manoeuvre: pin, side: left, place: c7-middle-finger, reading: abnormal",
                        "manoeuvre: plantar-response, side: both, reading: flexor"))
                .isEmpty();
    }

    @Test
    void expectedReadingsAreReadAndBothSidesAreTwo() {
        CaseFile file = CaseFile.read(
                        ROOT + "expected: [{manoeuvre: plantar-response, side: both, reading: flexor}]\n",
                        "a.yaml",
                        REFERENCE)
                .caseFile()
                .orElseThrow();

        assertThat(file.expected())
                .extracting(e -> e.item().toString())
                .containsExactly("plantar-response:right", "plantar-response:left");
    }

    /** Pin and temperature run together: common practice, no source. */
    @Test
    void pinLostWithTemperatureKeptOnTheSameSkinIsUnexplained() {
        assertThat(problems(
                        ROOT,
                        "manoeuvre: pin, side: left, place: c7-middle-finger, reading: \"0\"",
                        "manoeuvre: temperature, side: left, place: c7-middle-finger, reading: normal"))
                .containsExactly("a.yaml:5: expected: no lesion of this case explains \"normal\" for temperature,"
                        + " middle finger, back of the first phalanx, left: expected \"absent\", explained by nerve"
                        + " root compression, C7, left [unexplained]");
    }

    @Test
    void extensorPlantarWithoutADescendingLesionIsUnexplained() {
        assertThat(problems(ROOT, "manoeuvre: plantar-response, side: left, reading: extensor"))
                .containsExactly("a.yaml:4: expected: no lesion of this case explains \"extensor\" for plantar"
                        + " response, left: expected \"flexor\", as nothing that ails this patient changes it"
                        + " [unexplained]");
    }

    /** Practical Neurology, pupils (secondary): pressure from outside takes the pupil. */
    @Test
    void equalPupilsWithACompressiveThirdNerveAreUnexplained() {
        assertThat(problems(
                        THIRD,
                        "manoeuvre: pupil-size-light, side: left, reading: normal",
                        "manoeuvre: pupil-size-light, side: right, reading: normal"))
                .singleElement()
                .asString()
                .startsWith("a.yaml:4: expected: no lesion of this case explains \"normal\" for size of the pupil in"
                        + " light, left: expected \"")
                .endsWith(" mm\", explained by compression of the third nerve, left [unexplained]");
    }

    @Test
    void aNumberIsComparedWithinTheTolerance() {
        assertThat(problems(PATIENT, "manoeuvre: pressure-lying, place: systolic, reading: \"120\""))
                .isEmpty();
        assertThat(problems(PATIENT, "manoeuvre: pressure-lying, place: systolic, reading: \"180\""))
                .singleElement()
                .asString()
                .contains("\"180\" for blood pressure lying", "expected \"119 mmHg\"", "[unexplained]");
    }

    @Test
    void aReadingThatTheManoeuvreNeverGivesIsTold() {
        assertThat(problems(PATIENT, "manoeuvre: plantar-response, side: left, reading: extensr"))
                .singleElement()
                .asString()
                .startsWith("a.yaml:3: plantar-response is never read as \"extensr\"; did you mean \"extensor\"?"
                        + " (expected one of ")
                .endsWith("normal, abnormal) [unknown-reading]");
    }

    @Test
    void aSideThatIsMissingOrDoesNotBelongIsTold() {
        assertThat(problems(
                        PATIENT,
                        "manoeuvre: plantar-response, reading: flexor",
                        "manoeuvre: romberg, side: left, reading: steady"))
                .containsExactly(
                        "a.yaml:3: plantar-response is done on a side: expected right, left or both [side]",
                        "a.yaml:4: romberg takes no side: expected none, found \"left\" [side]");
    }

    @Test
    void aPlaceThatIsMissingOrUnknownIsTold() {
        assertThat(problems(PATIENT, "manoeuvre: pressure-lying, reading: normal"))
                .containsExactly("a.yaml:3: pressure-lying is done at a place: expected one of systolic, diastolic"
                        + " [unknown-place]");
        assertThat(problems(PATIENT, "manoeuvre: romberg, place: floor, reading: steady"))
                .containsExactly("a.yaml:3: romberg has no place \"floor\" (it has only one) [unknown-place]");
    }

    @Test
    void difficultyIsOneOfThreeWords() {
        assertThat(problems(PATIENT + "difficulty: tough\n"))
                .containsExactly("a.yaml:2: difficulty: expected easy, middling, hard, found \"tough\" [wrong-type]");
    }

    @Test
    void answersAndObservationsMayNotNameTheDiagnosisEither() {
        String body = PATIENT + "conditions: [{is: carpal-tunnel, side: left}]\n";
        String told = " names \"carpal tunnel syndrome\", which the student is to find: expected what the patient would"
                + " tell [gives-away]";
        assertThat(problems(body + "history: {pain: \"I have carpal tunnel syndrome.\"}\n"))
                .containsExactly("a.yaml:3: history:" + told);
        assertThat(problems(body + "observations: [{label: Letter, text: Carpal tunnel syndrome?}]\n"))
                .containsExactly("a.yaml:3: observations:" + told);
    }
}

package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.compile.CaseTruth;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Sign;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

class CaseFileTest {
    private static final Reference REFERENCE = Tables.shipped();

    private static CaseFile read(String text) {
        CaseReading reading = CaseFile.read(text, "a.yaml", REFERENCE);
        assertThat(reading.problems()).isEmpty();
        return reading.caseFile().orElseThrow();
    }

    private static List<Sign> examined(String text) {
        return REFERENCE.signs().examine(read(text).body(REFERENCE));
    }

    @Test
    void theSmallestFilesAreAPatientAndOneLesionOrCondition() {
        String lesion = """
                    patient: {age: 47, sex: female}
                    lesions: [{site: "root C7 left", loss: 0.8, onset: "6 weeks"}]
                    """;
        String condition = """
                    patient: {age: 47, sex: female}
                    conditions: [{is: root-compression, level: C7, side: left, severity: 0.8, onset: "6 weeks"}]
                    """;

        assertThat(examined(lesion).stream().map(Sign::reading))
                .containsExactlyElementsOf(
                        examined(condition).stream().map(Sign::reading).toList());
    }

    @Test
    void aConditionIsFoundByNameInAnyCase() {
        CaseFile file = read("""
                    patient: {age: 47, sex: female}
                    conditions: [{is: Nerve Root Compression, level: c7, side: Left}]
                    """);

        assertThat(file.conditions())
                .containsExactly(
                        new ConditionUse("root-compression", Side.LEFT, Optional.of("C7"), 1, Optional.empty()));
    }

    @Test
    void aNameAloneChangesNoSign() {
        String body = "age: 47, sex: female}\nlesions: [{site: root C7 left, loss: 0.8}]\n";

        assertThat(examined("patient: {name: Ada Thorne, town: Averstock, build: average, skin-tone: dark, " + body))
                .isEqualTo(examined("patient: {" + body));
    }

    @Test
    void aBuildMakesAnotherBody() {
        String rest = ", age: 47, sex: female}\n";

        assertThat(examined("patient: {build: heavy" + rest)).isNotEqualTo(examined("patient: {build: average" + rest));
    }

    @Test
    void aSeedMakesAnotherPersonAndSeedNoughtTheAverageOne() {
        String rest = ", age: 47, sex: female}\n";

        assertThat(read("patient: {seed: 0" + rest).patient())
                .isEqualTo(read("patient: {name: ''" + rest).patient());
        assertThat(examined("patient: {seed: 3" + rest)).isNotEqualTo(examined("patient: {seed: 0" + rest));
    }

    @Test
    void aQuantityStandsWhereTheFileSaysWhateverElseMovesIt() {
        CaseFile file = read("""
                    patient: {age: 47, sex: female, seed: 5}
                    conditions: [{is: underactive-thyroid}]
                    quantities: {thyroid-state: 0.25}
                    """);

        assertThat(file.body(REFERENCE).quantity("thyroid-state")).isEqualTo(0.25);
        assertThat(file.body(REFERENCE).ailments()).hasSize(2);
    }

    @Test
    void aRivalReplacesWhatIsNewAndLeavesWhatIsOld() {
        CaseFile file = read("""
                    patient: {age: 47, sex: female}
                    conditions:
                      - {is: root-compression, level: S1, side: left}
                      - {is: old-sciatica, level: S1, side: right}
                    """);
        ConditionUse rival = new ConditionUse("root-compression", Side.LEFT, Optional.of("L5"), 1, Optional.empty());

        assertThat(file.body(REFERENCE, rival).ailments())
                .extracting(Ailment::name)
                .containsExactly("old sciatica, S1, right", "nerve root compression, L5, left");
        assertThat(file.current(REFERENCE)).extracting(ConditionUse::is).containsExactly("root-compression");
    }

    @Test
    void wordsThatOtherReadersTurnIntoNumbersOrTruthStayText() {
        CaseFile file = read("""
                    patient: {age: 47, sex: female, name: no}
                    history: {pain: no}
                    observations: [{label: Ward, text: 012}]
                    """);

        assertThat(file.patient().name()).isEqualTo("no");
        assertThat(file.history()).containsEntry("pain", "no");
        assertThat(file.observations()).containsExactly(new Observation("Ward", "012"));
    }

    @Test
    void aTitleAndSlugAreMadeWhereNoneIsGiven() {
        CaseFile file = read("patient: {age: 47, sex: female}\n");

        assertThat(file.title()).isEqualTo("A female patient of 47");
        assertThat(file.slug()).isEqualTo("a-female-patient-of-47");
    }

    @Test
    void aLesionOfOldExplainsNothingNew() {
        CaseFile file = read("patient: {age: 47, sex: female}\n"
                + "lesions: [{site: root C7 left, onset: old}, {site: root S1 left, onset: 3 years, old: yes},"
                + " {site: root C8 left}]\n");

        assertThat(file.lesions()).extracting(LesionUse::old).containsExactly(true, true, false);
        assertThat(file.lesions().get(2).loss()).isEqualTo(1);
    }

    @Test
    void changesOfTheKeyTouchTheItemsTheyName() {
        CaseFile file = read("""
                    patient: {age: 47, sex: female}
                    essential: [{manoeuvre: pin, place: c7-middle-finger, because: it shows the root}]
                    unneeded: [{manoeuvre: temperature, because: pin told it}]
                    """);

        assertThat(file.essential().get(0).touches(new Item("pin", Side.LEFT, "c7-middle-finger")))
                .isTrue();
        assertThat(file.essential().get(0).touches(new Item("pin", Side.RIGHT, "c6-thumb")))
                .isFalse();
        assertThat(file.unneeded().get(0).touches(new Item("temperature", Side.RIGHT, "c6-thumb")))
                .isTrue();
    }

    @Test
    void whatTheKeyIsCompiledFromNamesTruthsRivalsAndChoices() {
        CaseTruth truth = read("""
                patient: {age: 47, sex: female}
                conditions: [{is: root-compression, level: C7, side: left}]
                differential:
                  - {is: root-compression, level: C7, side: left}
                  - {is: carpal-tunnel, side: left}
                  - {is: healthy}
                conclusion: {diagnosis: [root-compression, radial-groove-palsy], next: [mri-cervical-spine]}
                unneeded: [{manoeuvre: temperature, because: pin told it}]
                """).truth(REFERENCE);

        assertThat(truth.truths())
                .containsExactly(new Diagnosis(
                        "root-compression",
                        "nerve root compression, C7, left",
                        List.of(
                                "nerve root compression",
                                "radial-groove-palsy",
                                "radial nerve palsy in the spiral groove")));
        assertThat(truth.rivals()).extracting(r -> r.diagnosis().id()).containsExactly("carpal-tunnel", "healthy");
        assertThat(truth.choices()).containsExactly(new EssentialChoice("temperature", "", false, "pin told it"));
    }

    @Test
    void theTruthOfALesionAloneIsItsSiteUnlessTheConclusionNamesACondition() {
        String lesion = "patient: {age: 47, sex: female}\nlesions: [{site: root C7 left}]\n";

        assertThat(read(lesion).truth(REFERENCE).truths())
                .extracting(Diagnosis::id)
                .containsExactly("root C7 left");
        assertThat(read(lesion + "conclusion: {diagnosis: [root-compression]}\n")
                        .truth(REFERENCE)
                        .truths())
                .extracting(Diagnosis::id)
                .containsExactly("root-compression");
    }

    @Test
    void theTruthOfAHealthyPersonIsHealth() {
        CaseTruth truth =
                read("patient: {age: 47, sex: female}\ndifferential: [{is: healthy}, {is: carpal-tunnel, side: left}]\n")
                        .truth(REFERENCE);

        assertThat(truth.truths()).extracting(Diagnosis::id).containsExactly("healthy");
        assertThat(truth.rivals()).hasSize(1);
    }
}

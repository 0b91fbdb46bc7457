package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Question;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Problems with conditions, with what is told, and with the key. */
class ConditionProblemsTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final String PATIENT = "patient: {age: 47, sex: female}\n";
    private static final String ROOT = PATIENT + "conditions: [{is: root-compression, level: C7, side: left}]\n";

    private static void assertOnly(String text, String... problems) {
        assertThat(problems(text)).containsExactly(problems);
    }

    private static List<String> problems(String text) {
        return CaseFile.read(text, "a.yaml", REFERENCE).problems().stream()
                .map(Problem::toString)
                .toList();
    }

    @Nested
    class OfConditions {
        @Test
        void anUnknownConditionIsNamedWithTheNearest() {
            assertOnly(
                    PATIENT + "conditions: [{is: carpal-tunel, side: left}]\n",
                    "a.yaml:2: no condition is called \"carpal-tunel\"; did you mean \"carpal-tunnel\"? (the command"
                            + " \"conditions\" lists them) [unknown-condition]");
        }

        @Test
        void aMissingLevelIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: old-sciatica, side: left}]\n",
                    "a.yaml:2: old-sciatica is said with a level: expected one of S1, L5, L4 [level]");
        }

        @Test
        void aLevelThatDoesNotSuitIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: old-sciatica, side: left, level: C7}]\n",
                    "a.yaml:2: old-sciatica has no level \"C7\": expected one of S1, L5, L4 [level]");
        }

        @Test
        void aLevelWhereNoneBelongsIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: carpal-tunnel, side: left, level: C7}]\n",
                    "a.yaml:2: carpal-tunnel has no level \"C7\": expected none [level]");
        }

        @Test
        void aMissingSideIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: carpal-tunnel}]\n",
                    "a.yaml:2: carpal-tunnel is said with a side: expected right or left [side]");
        }

        @Test
        void aSideThatIsNoneIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: carpal-tunnel, side: none}]\n",
                    "a.yaml:2: carpal-tunnel is said with a side: expected right or left, found \"none\" [side]");
        }

        @Test
        void aSideWhereNoneBelongsIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: underactive-thyroid, side: left}]\n",
                    "a.yaml:2: underactive-thyroid takes no side: expected none, found \"left\" [side]");
        }

        @Test
        void aSeverityOutsideItsRangeIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{is: carpal-tunnel, side: left, severity: -0.1}]\n",
                    "a.yaml:2: conditions.severity: expected a number from 0 to 1, found \"-0.1\" [out-of-range]");
        }

        @Test
        void aConditionWithoutNameIsTold() {
            assertOnly(
                    PATIENT + "conditions: [{side: left}]\n",
                    "a.yaml:2: conditions lacks \"is\": expected a condition's id or name [missing]");
        }
    }

    private static final List<String> QUESTIONS = Tables.shipped().examination().questions().stream()
            .map(Question::id)
            .toList();

    @Nested
    class OfWhatIsTold {
        @Test
        void anUnknownQuestionIsNamedWithTheNearest() {
            assertOnly(
                    PATIENT + "history:\n  pian: none\n",
                    "a.yaml:3: history: no question is called \"pian\"; did you mean \"pain\"? (expected one of "
                            + String.join(", ", QUESTIONS) + ") [unknown-question]");
        }

        @Test
        void whatAManoeuvreFindsIsNotGivenBeforehand() {
            assertOnly(
                    PATIENT + "observations:\n  - {label: Triceps reflex, text: lost on the left}\n",
                    "a.yaml:3: \"Triceps reflex\" is found by examining (triceps-reflex): expected only what is given"
                            + " beforehand [observation]");
        }

        @Test
        void anObservationWithoutTextIsTold() {
            assertOnly(
                    PATIENT + "observations:\n  - label: Temperature\n",
                    "a.yaml:3: observations lacks \"text\": expected what was found [missing]");
        }

        @Test
        void aQuantityBeyondItsLimitsIsTold() {
            assertOnly(
                    PATIENT + "quantities: {thyroid-state: 3}\n",
                    "a.yaml:2: quantities.thyroid-state: expected a number from -1.2 to 1.2 (-1 overtly under to 1"
                            + " overtly over), found \"3\" [out-of-range]");
        }

        @Test
        void aConditionThatIsThereWholeOrNotAtAllTakesNoSlightSeverity() {
            assertThat(problems(PATIENT + "conditions: [{is: metal-aortic-valve, severity: 0.4}]\n"))
                    .contains(
                            "a.yaml:2: conditions.severity: expected a number from 1 to 1, found \"0.4\" [out-of-range]");
        }

        @Test
        void anUnknownQuantityIsNamedWithTheNearest() {
            assertThat(problems(PATIENT + "quantities: {thyroid-stat: 0}\n"))
                    .singleElement()
                    .asString()
                    .startsWith("a.yaml:2: no quantity is called \"thyroid-stat\"; did you mean \"thyroid-state\"?")
                    .endsWith("[unknown-quantity]");
        }

        @Test
        void aSlugWithCapitalsIsTold() {
            assertOnly(
                    PATIENT + "slug: A Case\n",
                    "a.yaml:2: slug: expected lower-case words with hyphens, found \"A Case\" [wrong-type]");
        }

        @Test
        void aVignetteThatNamesTheDiagnosisIsTold() {
            assertOnly(
                    ROOT + "vignette: |\n  Sent with a nerve root\n  compression.\n",
                    "a.yaml:3: vignette: names \"nerve root compression\", which the student is to find: expected what"
                            + " the patient would tell [gives-away]");
        }

        @Test
        void aTitleWithAllWordsOfTheIdInOneSentenceIsTold() {
            assertOnly(
                    ROOT + "title: Compression of a root\n",
                    "a.yaml:3: title: names \"nerve root compression\", which the student is to find: expected what the"
                            + " patient would tell [gives-away]");
        }

        @Test
        void anOldLeftoverMayBeTold() {
            assertOnly(PATIENT
                    + "conditions: [{is: old-sciatica, level: S1, side: left}]\nvignette: He has an old sciatica.\n");
        }
    }

    @Nested
    class OfTheKey {
        @Test
        void aDifferentialWithoutTheTruthIsTold() {
            assertOnly(
                    ROOT + "differential:\n  - {is: healthy}\n  - {is: root-compression, level: C6, side: left}\n",
                    "a.yaml:3: differential: expected the truth among the rivals, found no \"nerve root compression, C7,"
                            + " left\" [differential]");
        }

        @Test
        void aRivalThatNoManoeuvreSeparatesIsTold() {
            assertOnly(
                    PATIENT
                            + "conditions: [{is: old-sciatica, level: S1, side: left}]\n"
                            + "lesions: [{site: root C7 left}]\n"
                            + "differential:\n"
                            + "  - {is: root-compression, level: C6, side: left}\n"
                            + "  - {is: root-compression, level: C7, side: left}\n",
                    "a.yaml:6: differential: no manoeuvre tells \"nerve root compression, C7, left\" from the patient as"
                            + " described: expected a rival that differs in a sign [inseparable]");
        }

        @Test
        void aHealthyPersonIsTheTruthOfACaseWithoutAilment() {
            assertOnly(
                    PATIENT + "differential: [{is: carpal-tunnel, side: left}]\n",
                    "a.yaml:2: differential: expected the truth among the rivals, found no \"no disease\""
                            + " [differential]");
            assertOnly(PATIENT + "differential: [{is: carpal-tunnel, side: left}, {is: healthy}]\n");
        }

        @Test
        void anUnknownNextStepIsNamedWithTheNearest() {
            assertThat(problems(ROOT + "conclusion: {next: [mri-cervical]}\n"))
                    .singleElement()
                    .asString()
                    .startsWith("a.yaml:3: no next step is called \"mri-cervical\"; did you mean"
                            + " \"mri-cervical-spine\"? (expected one of")
                    .endsWith("[unknown-next-step]");
        }

        @Test
        void aConclusionThatRefusesTheTruthIsTold() {
            assertOnly(
                    ROOT + "conclusion: {diagnosis: [carpal-tunnel]}\n",
                    "a.yaml:3: conclusion.diagnosis: expected the case's own \"root-compression\" among those accepted"
                            + " [conclusion]");
        }

        @Test
        void aChangeWithoutReasonOrWithUnknownManoeuvreIsTold() {
            assertOnly(
                    ROOT
                            + "essential:\n  - {manoeuvre: tricep-reflex, because: it is cut}\n  - manoeuvre: triceps-reflex\n",
                    "a.yaml:4: no manoeuvre is called \"tricep-reflex\"; did you mean \"triceps-reflex\"? (the command"
                            + " \"manoeuvres\" lists them) [unknown-manoeuvre]",
                    "a.yaml:5: essential lacks \"because\": expected the reason, which the student is told [missing]");
        }

        @Test
        void aPlaceThatDoesNotSuitIsTold() {
            assertOnly(
                    ROOT + "unneeded:\n  - {manoeuvre: pin, place: c7-midle-finger, because: enough}\n",
                    "a.yaml:4: pin has no place \"c7-midle-finger\"; did you mean \"c7-middle-finger\"?"
                            + " [unknown-place]");
        }
    }
}

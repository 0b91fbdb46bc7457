package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Every kind of problem, with its line and its exact text. */
class CaseProblemsTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final String PATIENT = "patient: {age: 47, sex: female}\n";

    private static List<String> problems(String text) {
        return CaseFile.read(text, "a.yaml", REFERENCE).problems().stream()
                .map(Problem::toString)
                .toList();
    }

    private static void assertOnly(String text, String... problems) {
        assertThat(problems(text)).containsExactly(problems);
        assertThat(CaseFile.read(text, "a.yaml", REFERENCE).caseFile()).isEmpty();
    }

    @Nested
    class OfTheText {
        @Test
        void brokenYamlIsToldWithItsLine() {
            assertOnly(
                    "title: one\npatient: {age: 47, sex: female\n",
                    "a.yaml:3: not readable as YAML: expected ',' or '}', but got <stream end> [yaml]");
        }

        @Test
        void anEmptyFileIsToldWhatBelongsThere() {
            assertOnly("", "a.yaml:1: expected \"patient: {age: 47, sex: female}\", found an empty file [missing]");
        }

        @Test
        void aListIsNoCase() {
            assertOnly(
                    "- one\n- two\n",
                    "a.yaml:1: the case: expected entries such as \"key: text\", found a list [wrong-type]");
        }

        @Test
        void aKeyWrittenTwiceIsToldWithBothLines() {
            assertOnly(
                    PATIENT + "title: one\ntitle: two\n",
                    "a.yaml:3: the case: \"title\" stands here and on line 2 [duplicate-key]");
        }

        @Test
        void aSecondDocumentIsRefused() {
            assertOnly(
                    PATIENT + "---\n" + PATIENT,
                    "a.yaml:2: expected one document, found a second after \"---\" [yaml]");
        }

        @Test
        void aFileThatGrowsByAliasesIsRefusedBeforeItGrows() {
            String bomb = "a: &a [x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a]\nc: [*b, *b, *b, *b, *b, *b, *b, *b]\n";
            assertOnly(bomb, "a.yaml:1: expected every part written out, found an anchor (&) or an alias (*) [alias]");
        }

        @Test
        void aFileThatIsTooDeepIsRefused() {
            assertOnly(
                    "title: " + "[".repeat(5000) + "]".repeat(5000),
                    "a.yaml:1: expected at most 10 lists and mappings inside each other [too-deep]");
        }

        @Test
        void aFileThatIsTooLongIsRefused() {
            assertOnly(
                    "#".repeat(100_001),
                    "a.yaml:1: the file has 100001 characters: expected at most 100000 [too-large]");
        }

        @Test
        void severalProblemsAreToldInOneGoByLine() {
            assertThat(problems("titel: x\npatient: {age: 12, sex: female}\nlesions: [{site: root C7}]\n"))
                    .hasSize(3)
                    .isSortedAccordingTo((a, b) -> a.substring(0, 8).compareTo(b.substring(0, 8)));
        }
    }

    @Nested
    class OfKeys {
        @Test
        void anUnknownKeyIsNamedWithTheNearest() {
            assertOnly(
                    PATIENT + "vignete: x\n",
                    "a.yaml:2: the case: there is no \"vignete\" here; did you mean \"vignette\"? (expected title, slug, difficulty,"
                            + " patient, vignette, history, observations, conditions, lesions, quantities, differential,"
                            + " conclusion, essential, unneeded, expected, unsafe, expect) [unknown-key]");
        }

        @Test
        void anUnknownKeyOfAPartIsNamedToo() {
            assertOnly(
                    PATIENT + "lesions:\n  - site: root C7 left\n    los: 1\n",
                    "a.yaml:4: lesions: there is no \"los\" here; did you mean \"loss\"? (expected site, loss, onset,"
                            + " old) [unknown-key]");
        }

        @Test
        void findingsCannotBeOverridden() {
            assertThat(problems(PATIENT + "overrides: []\n"))
                    .singleElement()
                    .asString()
                    .startsWith("a.yaml:2: the case: there is no \"overrides\" here (expected");
        }
    }

    @Nested
    class OfThePatient {
        @Test
        void aCaseWithoutPatientIsRefused() {
            assertOnly(
                    "title: one\n",
                    "a.yaml:1: expected \"patient: {age: 47, sex: female}\", found no patient [missing]");
        }

        @Test
        void ageAndSexMustBeThere() {
            assertOnly(
                    "title: one\npatient: {name: Ada}\n",
                    "a.yaml:2: patient lacks \"age\": expected years, from 18 to 110 [missing]",
                    "a.yaml:2: patient lacks \"sex\": expected female or male [missing]");
        }

        @Test
        void aChildIsRefused() {
            assertOnly(
                    "patient:\n  age: 17\n  sex: male\n",
                    "a.yaml:2: patient.age: expected a whole number from 18 to 110, found \"17\" [out-of-range]");
        }

        @Test
        void anAgeInWordsIsRefused() {
            assertOnly(
                    "patient: {age: forty, sex: male}\n",
                    "a.yaml:1: patient.age: expected a whole number from 18 to 110, found \"forty\" [wrong-type]");
        }

        @Test
        void otherWordsForSexBuildAndSkinAreRefused() {
            assertOnly(
                    "patient: {age: 40, sex: f, build: stout, skin-tone: pale}\n",
                    "a.yaml:1: patient.sex: expected female or male, found \"f\" [wrong-type]",
                    "a.yaml:1: patient.build: expected slight, average, heavy, found \"stout\" [wrong-type]",
                    "a.yaml:1: patient.skin-tone: expected light, brown, dark, found \"pale\" [wrong-type]");
        }

        @Test
        void aListForThePatientIsRefused() {
            assertThat(problems("patient: [47]\n"))
                    .contains("a.yaml:1: patient: expected entries such as \"key: text\", found a list [wrong-type]");
        }
    }

    @Nested
    class OfLesions {
        @Test
        void anUnknownSiteIsToldWithExamples() {
            assertOnly(
                    PATIENT + "lesions:\n  - site: spinal chord T8\n",
                    "a.yaml:3: no structure is called \"spinal chord\" in \"spinal chord T8\"; did you mean"
                            + " \"spinal cord\", \"spinal cord half\", \"spinal cord anterior\","
                            + " \"spinal cord posterior\"?: expected for example"
                            + " \"root C7 left\", \"spinal cord T8 right half\" or \"ulnar nerve left at elbow\""
                            + " [unknown-site]");
        }

        @Test
        void aSiteWithoutSideIsRefused() {
            assertOnly(
                    PATIENT + "lesions: [{site: root C7}]\n",
                    "a.yaml:2: \"root C7\" names no side: expected right, left or both [unknown-site]");
        }

        @Test
        void aLesionWithoutSiteIsRefused() {
            assertOnly(
                    PATIENT + "lesions:\n  - loss: 0.5\n",
                    "a.yaml:3: lesions lacks \"site\": expected for example \"root C7 left\" [missing]");
        }

        @Test
        void aLossOutsideItsRangeIsRefused() {
            assertOnly(
                    PATIENT + "lesions: [{site: root C7 left, loss: 1.2}]\n",
                    "a.yaml:2: lesions.loss: expected a number from 0 to 1, found \"1.2\" [out-of-range]");
        }

        @Test
        void aLossInWordsIsRefused() {
            assertOnly(
                    PATIENT + "lesions: [{site: root C7 left, loss: most}]\n",
                    "a.yaml:2: lesions.loss: expected a number from 0 to 1, found \"most\" [wrong-type]");
        }

        @Test
        void anOnsetThatCannotBeReadIsRefused() {
            assertOnly(
                    PATIENT + "lesions: [{site: root C7 left, onset: lately}]\n",
                    "a.yaml:2: onset: expected for example \"6 weeks\", \"3 hours\", \"hours\", \"weeks\" or \"old\","
                            + " found \"lately\" [onset]");
        }

        @Test
        void oldIsYesOrNo() {
            assertOnly(
                    PATIENT + "lesions: [{site: root C7 left, old: true}]\n",
                    "a.yaml:2: lesions.old: expected yes or no, found \"true\" [wrong-type]");
        }

        @Test
        void aSingleLesionOutsideAListIsRefused() {
            assertOnly(
                    PATIENT + "lesions: {site: root C7 left}\n",
                    "a.yaml:2: lesions: expected a list, each entry after a dash, found a mapping [wrong-type]");
        }
    }
}

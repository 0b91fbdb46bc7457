package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.manubrium.TestSchool;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.tables.Reference;

/** What the shipped rules about harm are about in one patient. */
class HarmsOfCaseTest {
    private static final Reference REFERENCE = TestSchool.REFERENCE;

    private static Map<String, HarmRule> harms(String more) {
        CaseFile file = CaseFile.reread("patient: {age: 47, sex: female}\n" + more, "case", REFERENCE)
                .caseFile()
                .orElseThrow();
        return new HarmsOfCase(REFERENCE.signs(), REFERENCE.marking().harms())
                .of(file.body(REFERENCE), file.unsafe()).stream().collect(Collectors.toMap(HarmRule::id, rule -> rule));
    }

    private static HarmRule rule(String more, String id) {
        return Objects.requireNonNull(harms(more).get(id));
    }

    @Test
    void healthyPersonFeelsNothingOnStanding() {
        assertThat(rule("", "went-on").manoeuvres()).isEmpty();
    }

    /** Twenty or more fall on standing, and the patient says so: common practice, no source. */
    @Test
    void patientWhosePressureFallsFeelsItWhileItIsMeasuredUpright() {
        assertThat(rule("quantities: {autonomic-gain: 0}\n", "went-on").manoeuvres())
                .contains("pressure-standing-1-minute", "pressure-standing-3-minutes");
    }

    @Test
    void injuredNeckIsSaidByTheCaseAndByNothingElse() {
        assertThat(harms("")).doesNotContainKey("neck-moved").containsKey("neck-moved-unasked");
        assertThat(harms("unsafe: [neck-movement]\n")).containsKey("neck-moved");
    }

    @Test
    void rulesFindTheirManoeuvresByTheCautionsThatStandBesideThem() {
        List<String> careful = REFERENCE.examination().manoeuvres().stream()
                .filter(manoeuvre -> manoeuvre.cautions().contains("neck-movement"))
                .map(manoeuvre -> manoeuvre.id())
                .toList();

        assertThat(rule("", "neck-moved-unasked").manoeuvres()).isEqualTo(careful);
    }

    @Test
    void unknownCautionIsAProblemWithItsLine() {
        var reading = CaseFile.read("patient: {age: 47, sex: female}\nunsafe: [dancing]\n", "case", REFERENCE);

        assertThat(reading.problems()).anySatisfy(problem -> {
            assertThat(problem.line()).isEqualTo(2);
            assertThat(problem.rule()).isEqualTo("unknown-caution");
        });
    }
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Sign;

/** What the named conditions of eyes and circulation come to when the patient is examined. */
class EyeAndCirculationConditionsTest {
    private static final List<String> SYSTEMS = List.of("eyes", "neck veins", "pulse and pressure");

    private static Bedside with(String id, double severity) {
        Condition condition = Bedside.REFERENCE.conditions().condition(id).orElseThrow();
        Side side = condition.sided() ? Side.LEFT : Side.NONE;
        Optional<String> level = condition.levels().stream().findFirst();
        return Bedside.healthy(56)
                .ailing(Bedside.REFERENCE.conditions().ailment(condition, side, level, severity, Optional.empty()));
    }

    private static List<Sign> abnormal(Bedside patient) {
        return SYSTEMS.stream()
                .flatMap(system -> patient.system(system).stream())
                .filter(sign -> !sign.normal().orElse(true))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "third-nerve-compression, pupil-light-direct:left, pupil-third-nerve",
        "third-nerve-ischaemia, lid-height:left, lid-third-nerve",
        "optic-neuritis, swinging-light, light-in-eye",
        "optic-tract-lesion, swinging-light, light-in-tract",
        "sympathetic-chain-lesion, pupil-size-dark:left, pupil-sympathetic-second",
        "carotid-dissection, lid-height:left, lid-sympathetic",
        "tonic-pupil, pupil-near:left, pupil-ciliary",
        "old-tonic-pupil, pupil-near:left, old-nothing-new",
        "dilating-drops, pupil-near:left, pupil-iris",
        "dorsal-midbrain-compression, pupil-light-direct:right, light-in-midbrain",
        "neurosyphilis-pupils, pupil-size-dark:right, pupil-unchecked",
        "right-heart-failure, neck-vein-height, right-atrium-high",
        "right-heart-failure, abdominojugular-test, right-heart-failing",
        "caval-obstruction, neck-vein-pulsation, caval-block",
        "tricuspid-regurgitation, neck-vein-wave, tricuspid-leaks",
        "tricuspid-narrowing, neck-vein-wave, tricuspid-narrow",
        "pulmonary-hypertension, neck-vein-wave, ventricle-stiff",
        "constrictive-pericarditis, neck-vein-breathing, pericardium-tight",
        "cardiac-tamponade, neck-vein-wave, pericardium-full",
        "atrial-fibrillation, pulse-rhythm, atria-idle",
        "complete-heart-block, neck-vein-wave, atria-apart",
        "hypertension, pressure-lying@systolic, arteries-high",
        "blood-loss, pressure-standing-3-minutes@pulse, volume-lost",
        "autonomic-failure, pressure-standing-3-minutes@systolic, pressure-reflex-lost"
    })
    void eachConditionShowsAndIsExplained(String id, String item, String meaning) {
        Sign sign = with(id, 1).sign(item);

        assertThat(sign.normal()).contains(false);
        assertThat(sign.meaning().term()).isEqualTo(meaning);
        assertThat(sign.meaning().ailments()).hasSize(1);
    }

    @Test
    void noFindingOfAnyConditionIsLeftUnexplained() {
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            for (double severity : List.of(0.6, 1.0)) {
                assertThat(abnormal(with(condition.id(), severity)))
                        .as(condition.id())
                        .allSatisfy(sign -> assertThat(sign.meaning().term())
                                .as(sign.item().toString())
                                .isNotEqualTo("unexplained"));
            }
        }
    }
}

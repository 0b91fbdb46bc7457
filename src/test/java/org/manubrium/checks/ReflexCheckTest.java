package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.checks.Patient.healthy;
import static org.manubrium.checks.Patient.person;
import static org.manubrium.checks.Patient.with;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Grading, release and timing of the reflexes. */
class ReflexCheckTest {
    private static final List<String> SIDES = List.of("right", "left");

    /** X11: MSD Manual Professional, How to assess reflexes. Seen. */
    @Test
    void x11AnOldCutAboveRaisesReflexesBelowItAndACutAtTheLevelAbolishesThem() {
        Patient above = with("spinal cord T8");
        Patient at = with("spinal cord L3-L4").and("root L2 both");
        for (String side : SIDES) {
            above.brisk("knee-reflex:" + side, "ankle-reflex:" + side);
            at.lost("knee-reflex:" + side);
        }
    }

    /** X11 again: not in the shock of the first days. */
    @Test
    void x11AFreshCutSilencesInstead() {
        Patient fresh = healthy().and("spinal cord T8", 1, "1 day");
        SIDES.forEach(side -> fresh.lost("knee-reflex:" + side, "ankle-reflex:" + side));
    }

    /** X12: MSD Manual Professional, How to assess reflexes. Seen. */
    @Test
    void x12AnExtensorPlantarIsAbnormalAtEveryAgeAndAFlexorOneIsNormal() {
        for (int age = 18; age <= 95; age += 7) {
            Patient well = person(age, age);
            Patient ill = well.and("internal capsule left");
            assertThat(well.read("plantar-response:right")).isEqualTo("flexor");
            assertThat(well.sign("plantar-response:right").normal()).contains(true);
            assertThat(ill.read("plantar-response:right")).isEqualTo("extensor");
            assertThat(ill.sign("plantar-response:right").normal()).contains(false);
        }
    }

    /** X13: university neurosurgery teaching notes (secondary). Seen by reference. */
    @Test
    void x13ADifferenceOfOneGradeBetweenTheSidesIsAbnormal() {
        Patient patient = with("root C7 right");
        assertThat(patient.grade("triceps-reflex:right")).isLessThanOrEqualTo(patient.grade("triceps-reflex:left") - 1);
        assertThat(patient.sign("triceps-reflex:right").normal()).contains(false);
        assertThat(patient.sign("triceps-reflex:left").normal()).contains(true);
    }

    /** X13 again: lively on both sides with flexor plantars and no clonus is not. */
    @Test
    void x13LivelyReflexesOnBothSidesAreNormal() {
        List<Patient> lively = LongStream.rangeClosed(1, 60)
                .mapToObj(seed -> person(30, seed))
                .filter(p -> p.read("knee-reflex:right").equals("3"))
                .toList();
        assertThat(lively).hasSizeGreaterThan(5);
        for (Patient patient : lively) {
            for (String side : SIDES) {
                assertThat(patient.read("knee-reflex:" + side)).isEqualTo("3");
                assertThat(patient.read("plantar-response:" + side)).isEqualTo("flexor");
                assertThat(patient.grade("ankle-clonus:" + side)).isZero();
                assertThat(patient.sign("knee-reflex:" + side).normal()).contains(true);
            }
        }
    }

    /** X14: university neurosurgery teaching notes; university teaching notes (both secondary). Seen by reference. */
    @Test
    void x14AReflexThatOnlyReinforcementShowsIsGradeOneNotNought() {
        Patient faint = IntStream.rangeClosed(50, 100)
                .mapToObj(loss -> loss / 100.0)
                .map(loss -> healthy().and("root S1 left", loss, "6 weeks").and("root S2 left", loss, "6 weeks"))
                .filter(patient -> !moves(patient, "left", "none"))
                .findFirst()
                .orElseThrow();

        assertThat(moves(faint, "right", "none")).isTrue();
        assertThat(moves(faint, "left", "clench")).isTrue();
        assertThat(faint.read("ankle-reflex:left")).isEqualTo("1");
    }

    private static boolean moves(Patient patient, String side, String reinforcement) {
        return patient.shown("ankle-reflex:" + side, Map.of("reinforcement", reinforcement)).curves().stream()
                .flatMap(curve -> curve.samples().stream())
                .anyMatch(degrees -> degrees > 0.5);
    }

    /** X15: secondary text on the NINDS scale. Seen by reference. */
    @Test
    void x15GradeThreeCanBeNormalAndGradeFourIsMoreThanNormal() {
        for (long seed = 1; seed <= 60; seed++) {
            assertThat(person(30, seed).grade("knee-reflex:left")).isBetween(2.0, 3.0);
        }
        Patient released = with("spinal cord T8");
        assertThat(released.read("knee-reflex:left")).isEqualTo("4");
        assertThat(released.sign("knee-reflex:left").normal()).contains(false);
    }

    /** X45: BMJ 1965; 1:158-161, Role of the ankle-jerk in thyroid disease (abstract). Seen. */
    @Test
    void x45TheAnkleReflexRelaxesSlowlyWhenTheThyroidIsUnderactiveAndQuicklyWhenOveractive() {
        for (long seed = 0; seed <= 40; seed++) {
            Patient well = person(45, seed);
            assertThat(well.grade("ankle-relaxation:left")).isBetween(240.0, 340.0);
            assertThat(well.shifted("thyroid-state", -1).grade("ankle-relaxation:left"))
                    .isGreaterThan(340);
            assertThat(well.shifted("thyroid-state", 1).grade("ankle-relaxation:left"))
                    .isLessThan(240);
            assertThat(peak(well)).isBetween(145.0, 230.0);
            assertThat(peak(well.shifted("thyroid-state", -1))).isGreaterThan(peak(well));
            assertThat(peak(well.shifted("thyroid-state", 1))).isLessThan(peak(well));
        }
    }

    /** Milliseconds from the tap to the furthest movement. */
    private static double peak(Patient patient) {
        var curve = patient.shown("ankle-relaxation:left", Map.of()).curves().get(0);
        double most =
                curve.samples().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return curve.samples().indexOf(most) * curve.stepMs();
    }
}

package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.checks.Patient.REFERENCE;
import static org.manubrium.checks.Patient.healthy;
import static org.manubrium.checks.Patient.on;
import static org.manubrium.checks.Patient.with;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;

/** The dermatomes and myotomes of the international standard. */
class SkinCheckTest {
    private static final List<String> KEY_POINTS = List.of(
            "c2-back-of-head",
            "c3-above-collar-bone",
            "c4-top-of-shoulder",
            "c5-outer-elbow",
            "c6-thumb",
            "c7-middle-finger",
            "c8-little-finger",
            "t1-inner-elbow",
            "t2-armpit",
            "t3-third-space",
            "t4-nipple-level",
            "t5-below-nipple",
            "t6-xiphisternum",
            "t7-quarter-to-navel",
            "t8-halfway-to-navel",
            "t9-three-quarters-to-navel",
            "t10-navel",
            "t11-below-navel",
            "t12-groin",
            "l1-upper-thigh",
            "l2-inner-thigh",
            "l3-inner-knee",
            "l4-inner-ankle",
            "l5-dorsum-of-foot",
            "s1-lateral-heel",
            "s2-back-of-knee",
            "s3-sitting-bone",
            "s4-5-perianal");

    /** The points at which pin is not felt when one root is cut, of the 28 key ones on each side. */
    private static List<String> numb(String root) {
        Patient patient = with(root);
        return Stream.of("right", "left")
                .flatMap(side -> KEY_POINTS.stream().map(p -> "pin:" + side + "@" + p))
                .filter(item -> patient.read(item).equals("0"))
                .toList();
    }

    /** X25: ISNCSCI key sensory points (2008); SCI sensory testing list (secondary). Seen. */
    @ParameterizedTest
    @CsvSource({"T4, t4-nipple-level", "T6, t6-xiphisternum", "T10, t10-navel", "T12, t12-groin"})
    void x25LevelsOfTheTrunk(String root, String point) {
        assertThat(numb("root " + root + " left")).containsExactly("pin:left@" + point);
    }

    /** X26: ISNCSCI key sensory points (2008); Spinal Cord 2016, study of the L4, L5 and S1 key points. Seen. */
    @ParameterizedTest
    @CsvSource({"L4, l4-inner-ankle", "L5, l5-dorsum-of-foot", "S1, s1-lateral-heel"})
    void x26LevelsOfTheFoot(String root, String point) {
        assertThat(numb("root " + root + " left")).containsExactly("pin:left@" + point);
    }

    /** X27: ISNCSCI key sensory points (2008). Seen. */
    @ParameterizedTest
    @CsvSource({
        "C5, c5-outer-elbow",
        "C6, c6-thumb",
        "C7, c7-middle-finger",
        "C8, c8-little-finger",
        "T1, t1-inner-elbow"
    })
    void x27LevelsOfTheArm(String root, String point) {
        assertThat(numb("root " + root + " right")).containsExactly("pin:right@" + point);
    }

    /** X28: Burns & Tansey, Spinal Cord 2020; SCI sensory testing list (secondary). Seen by reference. */
    @Test
    void x28TheKeyPointsAddUpTo56OnASideAndTo112InHealthAndToNothingBelowACutCord() {
        for (String kind : List.of("light-touch", "pin")) {
            assertThat(sum(healthy(), kind, "right")).isEqualTo(56);
            assertThat(sum(healthy(), kind, "left") + sum(healthy(), kind, "right"))
                    .isEqualTo(112);
            assertThat(sum(with("spinal cord C2"), kind, "left")).isLessThanOrEqualTo(4);
        }
    }

    private static double sum(Patient patient, String kind, String side) {
        return KEY_POINTS.stream()
                .mapToDouble(p -> patient.grade(kind + ":" + side + "@" + p))
                .sum();
    }

    static Stream<String> keyPoints() {
        return KEY_POINTS.stream();
    }

    /** Every key point of the standard loses pin and touch with its own root, and no other key point loses pin with it. */
    @ParameterizedTest
    @MethodSource("keyPoints")
    void everyKeyPointFallsWithItsOwnRoot(String point) {
        String root = point.startsWith("s4-5")
                ? "S4-S5"
                : point.substring(0, point.indexOf('-')).toUpperCase(java.util.Locale.ROOT);
        assertThat(numb("root " + root + " left")).containsExactly("pin:left@" + point);
        with("root " + root + " left").weak("light-touch:left@" + point);
    }

    static Stream<Map.Entry<String, String>> keyMuscles() {
        Map<String, String> movements = new LinkedHashMap<>();
        movements.put("C5", "elbow-flexion");
        movements.put("C6", "wrist-extension");
        movements.put("C7", "elbow-extension");
        movements.put("C8", "finger-flexion");
        movements.put("T1", "little-finger-abduction");
        movements.put("L2", "hip-flexion");
        movements.put("L3", "knee-extension");
        movements.put("L4", "ankle-dorsiflexion");
        movements.put("L5", "big-toe-extension");
        movements.put("S1", "ankle-plantar-flexion");
        return movements.entrySet().stream();
    }

    /**
     * ISNCSCI key muscles. Seen. The movement weakens with its root, and no root weakens it more; but for the dorsiflexors,
     * which in proved lesions of one root went with L5 (Tsao 2003, Muscle Nerve 27:60; seen by reference).
     */
    @ParameterizedTest
    @MethodSource("keyMuscles")
    void everyKeyMuscleFallsWithItsOwnRootAndMostWithIt(Map.Entry<String, String> muscle) {
        String item = muscle.getValue() + ":left";
        Patient own = with("root " + muscle.getKey() + " left");
        own.weak(item);
        own.kept(muscle.getValue() + ":right");
        List<String> worse = new ArrayList<>();
        for (Segment other : Segment.all()) {
            boolean known = muscle.getKey().equals("L4") && other == Segment.L5;
            if (!known && with("root " + other + " left").grade(item) < own.grade(item)) {
                worse.add(other.name());
            }
        }
        assertThat(worse).as("roots that weaken it more").isEmpty();
    }

    @Test
    void theListOfKeyPointsIsTheListInUse() {
        assertThat(REFERENCE.anatomy().points().stream()
                        .filter(p -> p.kind().equals("key"))
                        .map(p -> p.id()))
                .containsExactlyElementsOf(KEY_POINTS);
        assertThat(Arrays.asList(on("pin", Side.LEFT))).hasSizeGreaterThan(28);
    }
}

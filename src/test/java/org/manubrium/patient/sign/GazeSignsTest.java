package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;

/** What the texts say of eyes that do not move as they should. */
class GazeSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(50);
    private static final List<String> WAYS =
            List.of("outward", "inward", "up", "down", "up-out", "up-in", "down-out", "down-in");

    private static String fallsShort(Bedside patient, String eye) {
        return WAYS.stream()
                .filter(way -> !patient.word("eye-movement:" + eye + "@" + way).equals("full"))
                .collect(Collectors.joining(" "));
    }

    /** CURRENT, ocular motor palsies; Wills Eye Manual; MSD Manual, fourth palsy and internuclear ophthalmoplegia; Larner. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', emptyValue = "", textBlock = """
            third nerve right           | inward up down up-out up-in down-out down-in | '' | down-and-out
            third nerve right at motor fibres | inward up down up-out up-in down-out down-in | '' | down-and-out
            trochlear nerve right       | down down-in | '' | high
            trochlear nucleus left      | down down-in | '' | high
            abducens nerve right        | outward | '' | in
            abducens nucleus right      | outward | inward | ahead
            pontine gaze centre right   | outward | inward | ahead
            medial longitudinal fasciculus right | inward | '' | ahead
            pontine tegmentum right     | outward inward | inward | ahead
            posterior commissure        | up up-out up-in | up up-out up-in | ahead
            dorsal midbrain             | up up-out up-in | up up-out up-in | ahead
            """)
    void whatFallsShortTellsTheNerve(String where, String right, String left, String rest) {
        Bedside patient = HEALTHY.lesion(where, 1, "6 weeks");

        assertThat(fallsShort(patient, "right")).isEqualTo(right);
        assertThat(fallsShort(patient, "left")).isEqualTo(left);
        assertThat(patient.word("eye-at-rest:right")).isEqualTo(rest);
    }

    /** MSD Manual, Internuclear ophthalmoplegia: convergence is usually kept; the other eye beats. */
    @Test
    void anEyeWithoutItsFasciculusStillTurnsInForNear() {
        Bedside patient = HEALTHY.lesion("medial longitudinal fasciculus right", 1, "3 weeks");

        assertThat(patient.word("convergence:right")).isEqualTo("full");
        assertThat(HEALTHY.lesion("third nerve right", 1, "3 weeks").word("convergence:right"))
                .isEqualTo("none");
        assertThat(patient.meaning("eye-movement:right@inward")).isEqualTo("eye-fasciculus");
        List<Double> beating = patient.curve("eye-movement:right@inward", "left outwards");
        long back = beating.stream()
                .filter(d -> d < beating.get(beating.size() - 1) - 1)
                .count();
        assertThat(back).isGreaterThan(5);
    }

    @ParameterizedTest
    @CsvSource({
        "abducens nerve right, outward, 'Two, side by side.'",
        "abducens nerve right, inward, One.",
        "trochlear nerve right, down-in, 'Two, one above the other.'",
        "abducens nucleus right, outward, One.",
        "pontine gaze centre right, outward, One."
    })
    void thePatientSeesDoubleWhereTheEyesPart(String where, String way, String said) {
        Bedside patient = HEALTHY.lesion(where, 1, "6 weeks");

        assertThat(patient.show("eye-movement:right@" + way, Map.of()).words()).isEqualTo(said);
    }

    /** CURRENT, ocular motor palsies: the second image is hidden while the lid covers the eye. */
    @Test
    void aLidThatCoversTheEyeHidesTheSecondImage() {
        Bedside patient = HEALTHY.lesion("third nerve right", 1, "6 weeks");

        assertThat(patient.amount("lid-height:right")).isLessThan(3);
        assertThat(patient.show("eye-movement:right@inward", Map.of()).words()).isEqualTo("One.");
    }

    /** Ocular weakness in myasthenia gravis (306 patients); Kim 2023: it tires; the pupil is normal always. */
    @Test
    void aWeakJunctionTiresAndLeavesThePupils() {
        Bedside patient = HEALTHY.condition("ocular-myasthenia", Side.NONE);

        assertThat(patient.amount("lid-fatigue:right")).isGreaterThan(2);
        assertThat(patient.meaning("lid-fatigue:right")).isEqualTo("lid-junction");
        assertThat(patient.word("pupil-light-direct:right")).isEqualTo("brisk");
        assertThat(patient.word("eye-closure:right")).isEqualTo("weak");
        assertThat(HEALTHY.lesion("third nerve right", 0.5, "6 weeks").amount("lid-fatigue:right"))
                .isLessThan(0.5);
    }

    /** Harrad 2015, Eye 29:234; Someda 2023: up-gaze is short, lids retract and lag, the eyes stand out, pupils normal. */
    @Test
    void thyroidEyesAreTight() {
        Bedside patient = HEALTHY.condition("thyroid-eye-disease", Side.NONE);

        assertThat(patient.word("eye-movement:right@up")).isEqualTo("limited");
        assertThat(patient.word("eye-movement:right@outward")).isEqualTo("limited");
        assertThat(patient.word("eye-movement:right@inward")).isEqualTo("full");
        assertThat(patient.word("lid-lag:right")).isEqualTo("lags");
        assertThat(patient.amount("lid-height:right") - HEALTHY.amount("lid-height:right"))
                .isGreaterThan(2);
        assertThat(patient.amount("proptosis:right")).isGreaterThan(20);
        assertThat(patient.meaning("eye-movement:right@up")).isEqualTo("eye-tight-lower");
        assertThat(patient.word("pupil-near:right")).isEqualTo("prompt");
    }

    /** Larner, Parinaud syndrome: up-gaze lost, lids retracted, light poor. */
    @Test
    void theDorsalMidbrain() {
        Bedside patient = HEALTHY.lesion("dorsal midbrain", 1, "6 weeks");

        assertThat(patient.amount("lid-height:right")).isGreaterThan(HEALTHY.amount("lid-height:right") + 1.5);
        assertThat(patient.meaning("lid-height:left")).isEqualTo("lid-unchecked");
        assertThat(patient.word("pupil-light-direct:right")).isEqualTo("absent");
        assertThat(patient.word("convergence:right")).isEqualTo("full");
    }

    @Test
    void theCavernousSinusTakesThreeNervesTheForeheadAndTheSympathetic() {
        Bedside patient = HEALTHY.condition("cavernous-sinus-mass", Side.RIGHT);

        assertThat(WAYS)
                .allSatisfy(way ->
                        assertThat(patient.word("eye-movement:right@" + way)).isNotEqualTo("full"));
        assertThat(patient.word("face-pin:right@forehead")).isEqualTo("0");
        assertThat(patient.word("face-pin:right@chin")).isEqualTo("2");
        assertThat(patient.word("corneal-reflex:right")).isEqualTo("neither");
        assertThat(patient.amount("lid-height:right")).isLessThan(4);
        assertThat(patient.word("acuity:right")).isEqualTo("6/6");
    }
}

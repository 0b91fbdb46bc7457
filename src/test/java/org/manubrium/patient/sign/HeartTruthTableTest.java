package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;

/** What texts say is heard and felt in each disease of the heart, read off an average patient of 50. */
class HeartTruthTableTest {
    private static Bedside with(String condition) {
        return Bedside.healthy(50).condition(condition, Side.NONE);
    }

    private static List<String> oneOf(String codes) {
        return List.of(codes.split("\\|"));
    }

    /**
     * ACC/AHA 2006 table of interventions; Etchells 1997; Choudhry & Etchells 1999; Am Fam Physician 2011 on congenital
     * defects; MSD Manual on pulmonary valves and septal defect; Lembo 1988; MSD Manual on innocent murmurs.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "aortic-stenosis, ejection, aortic, late-peak",
        "aortic-sclerosis, ejection, aortic, early-peak",
        "mitral-regurgitation, pansystolic, mitral, even",
        "mitral-prolapse, late-systolic, mitral, grows",
        "tricuspid-regurgitation, pansystolic, tricuspid, even",
        "ventricular-septal-defect, pansystolic, tricuspid, even",
        "obstructive-cardiomyopathy, ejection, tricuspid|mitral, late-peak",
        "pulmonary-stenosis, ejection, pulmonary, late-peak",
        "atrial-septal-defect, ejection, pulmonary, early-peak",
        "pulmonary-regurgitation, early-diastolic, pulmonary, fades",
        "mitral-stenosis, mid-diastolic, mitral, fades-and-grows",
        "patent-duct, continuous, infraclavicular, swells",
        "innocent-murmur, ejection, aortic|pulmonary, early-peak",
        "severe-anaemia, ejection, aortic|pulmonary, early-peak",
        "overactive-thyroid, ejection, aortic|pulmonary, early-peak"
    })
    void aMurmurIsLoudestWhereTheTextsSayAndOfTheirTimeAndShape(
            String condition, String timing, String place, String shape) {
        Bedside patient = with(condition);
        String loudest = patient.word("murmur-loudest");

        assertThat(loudest).isIn(oneOf(place));
        assertThat(patient.word("murmur-timing@" + loudest)).isEqualTo(timing);
        assertThat(patient.word("murmur-shape")).isEqualTo(shape);
    }

    /** Harrison's Manual; sound pitches of the same texts: a rumble is low, a leak of the left side high. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "mitral-stenosis, low",
        "aortic-regurgitation, high",
        "mitral-regurgitation, high",
        "aortic-stenosis, medium"
    })
    void theHarderBloodIsDrivenTheHigherItSounds(String condition, String pitch) {
        assertThat(with(condition).word("murmur-pitch")).isEqualTo(pitch);
    }

    /** ACC/AHA 2006 and Lembo 1988 on what makes murmurs louder and softer; grip in aortic stenosis: no rule. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "aortic-stenosis, unchanged, softer, softer, louder, unchanged|softer",
        "mitral-regurgitation, unchanged, softer, softer, louder, louder",
        "mitral-prolapse, unchanged, louder, louder, softer, unchanged|softer",
        "obstructive-cardiomyopathy, unchanged, louder, louder, softer, softer",
        "aortic-regurgitation, unchanged, softer, softer, louder, louder",
        "ventricular-septal-defect, unchanged, softer, softer, louder, louder",
        "mitral-stenosis, unchanged, softer, softer, louder, louder",
        "tricuspid-regurgitation, louder, softer, softer, louder, unchanged",
        "pulmonary-stenosis, louder, softer, softer, louder, unchanged",
        "pulmonary-regurgitation, louder, softer, softer, louder, unchanged",
        "tricuspid-narrowing, louder, softer, softer, louder, louder|unchanged",
        "atrial-septal-defect, unchanged, softer, softer, louder, unchanged",
        "innocent-murmur, unchanged, softer, softer, louder, unchanged"
    })
    void murmursAnswerToBreathStrainPostureAndGrip(
            String condition, String in, String strain, String stand, String squat, String grip) {
        Bedside patient = with(condition);

        assertThat(patient.word("murmur-on-breathing-in")).isEqualTo(in);
        assertThat(patient.word("murmur-on-straining")).isEqualTo(strain);
        assertThat(patient.word("murmur-on-standing")).isEqualTo(stand);
        assertThat(patient.word("murmur-on-squatting")).isEqualTo(squat);
        assertThat(patient.word("murmur-on-gripping")).isIn(oneOf(grip));
    }

    /** McGee 4th ed. ch. 40: splitting; MSD Manual: fixed in a hole between the atria. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "atrial-septal-defect, fixed",
        "right-bundle-block, wide",
        "pulmonary-stenosis, wide",
        "left-bundle-block, reversed",
        "aortic-stenosis, single|reversed",
        "obstructive-cardiomyopathy, single|reversed",
        "mitral-prolapse, closes"
    })
    void theSecondSoundSplitsAsTheTextsSay(String condition, String split) {
        assertThat(with(condition).word("second-sound-split")).isIn(oneOf(split));
    }

    /** McGee 4th ed. ch. 40: first sound; Harrison's Manual: loud pulmonary part; Etchells 1997: soft aortic part. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "mitral-stenosis, first-sound, loud",
        "overactive-thyroid, first-sound, loud",
        "first-degree-block, first-sound, soft",
        "mitral-regurgitation, first-sound, soft",
        "left-heart-failure, first-sound, soft",
        "complete-heart-block, first-sound, varies",
        "atrial-fibrillation, first-sound, varies",
        "pulmonary-hypertension, second-sound-loudness@pulmonary, loud",
        "pulmonary-stenosis, second-sound-loudness@pulmonary, soft",
        "aortic-stenosis, second-sound-loudness@aortic, soft",
        "hypertension, second-sound-loudness@aortic, loud",
        "aortic-sclerosis, second-sound-loudness@aortic, normal",
        "cardiac-tamponade, first-sound, soft"
    })
    void valvesCloseLoudOrSoftAsTheTextsSay(String condition, String item, String word) {
        assertThat(with(condition).word(item)).isEqualTo(word);
    }

    /** McGee 4th ed. ch. 41 and 42; Harrison's Manual, heart sounds; MSD Manual on the rub. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "left-heart-failure, filling-sounds@mitral, third",
        "pulmonary-oedema, filling-sounds@mitral, third",
        "mitral-regurgitation, filling-sounds@mitral, third",
        "right-heart-failure, filling-sounds@tricuspid, third",
        "aortic-stenosis, filling-sounds@mitral, fourth",
        "hypertension, filling-sounds@mitral, fourth",
        "obstructive-cardiomyopathy, filling-sounds@mitral, fourth",
        "pulmonary-hypertension, filling-sounds@tricuspid, fourth",
        "mitral-stenosis, filling-sounds@mitral, none",
        "mitral-stenosis, sharp-sounds@tricuspid, opening-snap",
        "mitral-prolapse, sharp-sounds@mitral, mid-click",
        "pulmonary-stenosis, sharp-sounds@pulmonary, ejection-click",
        "aortic-coarctation, sharp-sounds@mitral, ejection-click",
        "constrictive-pericarditis, sharp-sounds@mitral, knock",
        "metal-aortic-valve, sharp-sounds@aortic, metal",
        "acute-pericarditis, pericardial-rub, rub"
    })
    void furtherSoundsAreHeardWhereTheTextsSay(String condition, String item, String word) {
        assertThat(with(condition).word(item)).isEqualTo(word);
    }

    /** McGee 4th ed. ch. 38; Etchells 1997 (slow carotid); general texts on the collapsing and the jerky pulse. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "aortic-stenosis, pulse-character, slow-rising",
        "aortic-sclerosis, pulse-character, normal",
        "aortic-regurgitation, pulse-character, collapsing",
        "patent-duct, pulse-character, collapsing",
        "obstructive-cardiomyopathy, pulse-character, jerky",
        "aortic-regurgitation, pulse-volume, bounding",
        "patent-duct, pulse-volume, bounding",
        "cardiac-tamponade, pulse-volume, reduced",
        "aortic-stenosis, pulse-volume, reduced",
        "left-heart-failure, pulse-alternation, alternate",
        "aortic-coarctation, femoral-delay, late",
        "left-heart-failure, apex-place, outside",
        "aortic-regurgitation, apex-place, outside",
        "aortic-stenosis, apex-character, sustained",
        "mitral-regurgitation, apex-character, thrusting",
        "mitral-stenosis, apex-character, tapping",
        "obstructive-cardiomyopathy, apex-character, double",
        "pulmonary-hypertension, parasternal-heave, strong",
        "ventricular-septal-defect, thrill@tricuspid, systolic",
        "atrial-septal-defect, thrill@pulmonary, none"
    })
    void pulseAndPrecordiumFeelAsTheTextsSay(String condition, String item, String word) {
        assertThat(with(condition).word(item)).isEqualTo(word);
    }

    /** ACC/AHA 2006 and Choudhry & Etchells 1999: left side with the bell; leaning forward with the breath out. */
    @Test
    void positionsBringOutWhatIsMissedLyingOnTheBack() {
        Bedside rumble = with("mitral-stenosis");
        Bedside leak = with("aortic-regurgitation");

        assertThat(rumble.word("apex-on-the-left-side")).isEqualTo("mid-diastolic");
        assertThat(rumble.sign("apex-on-the-left-side", java.util.Map.of("heart-piece-bell-first", "diaphragm"))
                        .reading())
                .hasToString("Seen[seen=none]");
        assertThat(leak.word("sternal-edge-leaning-forward")).isEqualTo("early-diastolic");
    }

    /** Etchells 1997 and encyclopaedia text: sclerosis spreads little; mitral leak to the armpit; obstruction not to the neck. */
    @Test
    void murmursSpreadAlongTheirJets() {
        assertThat(with("aortic-stenosis").word("murmur-spread@neck")).isEqualTo("heard");
        assertThat(with("aortic-sclerosis").word("murmur-spread@neck")).isEqualTo("none");
        assertThat(with("obstructive-cardiomyopathy").word("murmur-spread@neck"))
                .isEqualTo("none");
        assertThat(with("mitral-regurgitation").word("murmur-spread@axilla")).isEqualTo("heard");
        assertThat(with("mitral-regurgitation").word("murmur-spread@neck")).isEqualTo("none");
        assertThat(with("aortic-coarctation").word("murmur-spread@back")).isEqualTo("heard");
        assertThat(with("innocent-murmur").word("murmur-spread@neck")).isEqualTo("none");
    }

    /** Am Fam Physician 2011: the small hole is the loud one. */
    @Test
    void aLargeHoleBetweenTheVentriclesIsSofterThanASmallOne() {
        assertThat(grade("large-ventricular-septal-defect")).isLessThan(grade("ventricular-septal-defect"));
    }

    private static int grade(String condition) {
        return Integer.parseInt(with(condition).word("murmur-loudness@tricuspid"));
    }

    /** Harrison's Manual: the snap comes closer to the second sound as the valve tightens; 40 to 120 ms. */
    @Test
    void theSnapComesSoonerTheHigherThePressureBehindIt() {
        double mild = HeartSounds.after(
                Bedside.healthy(50).shift("mitral-valve-area", -3.2).shift("left-filling-pressure", 3));
        double tight = HeartSounds.after(with("mitral-stenosis"));

        assertThat(tight).isLessThan(mild);
        assertThat(List.of(mild, tight)).allSatisfy(ms -> assertThat(ms).isBetween(40.0, 120.0));
    }

    /** Only the presystolic part of the rumble needs the atria (ACC/AHA 2006, quoted). */
    @Test
    void inFibrillationTheRumbleLosesItsRiseBeforeTheFirstSound() {
        Bedside patient = with("mitral-stenosis").condition("atrial-fibrillation", Side.NONE);

        assertThat(patient.word("murmur-shape")).isEqualTo("fades");
    }
}

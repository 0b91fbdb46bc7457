package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.SkinTone;
import org.manubrium.patient.Variation;

/** Approach, hands, skin, arteries, legs and joints against what texts and the trade say of them. */
class SurfaceSignsTest {
    private static Bedside ill(String condition) {
        return Bedside.healthy(58).condition(condition, Side.NONE);
    }

    private static Bedside ill(String condition, Side side) {
        return Bedside.healthy(58).condition(condition, side);
    }

    private static Bedside in(SkinTone tone) {
        Person person = new Person(45, Sex.FEMALE, Variation.AVERAGE, tone);
        return new Bedside(new Body(Bedside.REFERENCE.anatomy(), Bedside.REFERENCE.physiology(), person, List.of()));
    }

    private static boolean normal(Sign sign) {
        return sign.normal().orElseThrow();
    }

    /** X55: 2011 ACCF/AHA update and ESC 2024: 0.90 or less abnormal, 1.00-1.40 normal, over 1.40 not interpretable. */
    @Test
    void x55TheAnkleIndexIsLowFromNineTenthsDownAndStiffAboveOnePointFour() {
        double before = 2;
        for (int hundredths = 0; hundredths <= 95; hundredths += 5) {
            Sign sign = Bedside.healthy(60)
                    .shift("artery.left.iliac.narrow", hundredths / 100.0)
                    .sign("ankle-index:left");
            double index = ((Reading.Amount) sign.reading()).value();
            assertThat(index).isLessThanOrEqualTo(before);
            assertThat(normal(sign)).as("index %s", index).isEqualTo(index > 0.9 && index <= 1.4);
            before = index;
        }
        assertThat(Bedside.healthy(60).amount("ankle-index:right")).isBetween(1.0, 1.4);
        Bedside stiff = ill("stiff-leg-arteries");
        assertThat(stiff.amount("ankle-index:right")).isGreaterThan(1.4);
        assertThat(normal(stiff.sign("ankle-index:right"))).isFalse();
    }

    /** The ratio: higher ankle pressure over higher arm pressure (2011 ACCF/AHA update and ESC 2024). */
    @Test
    void theIndexTakesTheHigherOfBothAnklePressuresAndOfBothArms() {
        Bedside patient = Bedside.healthy(60)
                .shift("artery.left.posterior-tibial.narrow", 0.5)
                .shift("artery.right.subclavian.narrow", 0.4);
        double index =
                patient.amount("ankle-pressure:left@dorsalis-pedis") / patient.amount("arm-pressure:left@systolic");

        assertThat(patient.amount("ankle-index:left")).isCloseTo(index, within(0.011));
        assertThat(patient.amount("ankle-pressure:left@posterior-tibial"))
                .isLessThan(patient.amount("ankle-pressure:left@dorsalis-pedis"));
    }

    /** J Clin Hypertens review (PMC8030062), Table 2: a difference of more than 10 mmHg between the arms counts in Canada. */
    @Test
    void aNarrowSubclavianArteryLowersAndDelaysThePulseOfItsArmAlone() {
        Bedside patient = ill("subclavian-narrowing", Side.LEFT);
        double apart = patient.amount("arm-pressure:right@systolic") - patient.amount("arm-pressure:left@systolic");

        assertThat(apart).isGreaterThan(10);
        assertThat(normal(patient.sign("arm-pressure:left@systolic"))).isFalse();
        assertThat(normal(patient.sign("arm-pressure:right@systolic"))).isTrue();
        assertThat(patient.word("both-wrists")).isEqualTo("left-later");
        assertThat(patient.word("arm-pulses:left@radial")).isEqualTo("1");
    }

    /** Khan 2006, JAMA 295:536 (abstract): pulses, cool skin, a bruit and sores go with arterial disease of the leg. */
    @Test
    void arterialDiseaseTakesThePulsesBelowItAndSparesThoseAbove() {
        Bedside thigh = ill("peripheral-arterial-disease", Side.RIGHT);

        assertThat(thigh.word("groin-pulse:right@femoral")).isEqualTo("2");
        for (String below : List.of("popliteal", "posterior-tibial", "dorsalis-pedis")) {
            assertThat(thigh.word("leg-pulses:right@" + below)).as(below).isEqualTo("0");
            assertThat(thigh.word("leg-pulses:left@" + below)).as(below).isEqualTo("2");
        }
        assertThat(thigh.word("foot-warmth:right")).isEqualTo("cool");
        assertThat(thigh.word("asked-walking")).isEqualTo("stops-soon");
        Bedside pelvis = Bedside.healthy(58).shift("artery.right.iliac.narrow", 0.55);
        assertThat(pelvis.word("groin-sound:right")).isEqualTo("rushes");
        assertThat(pelvis.word("groin-sound:left")).isEqualTo("quiet");
    }

    /** From memory: a sole that pales below 20 degrees is critical; a healthy one keeps its colour upright. */
    @Test
    void theSolePalesTheSoonerTheLessBloodReachesIt() {
        assertThat(Bedside.healthy(58).amount("raised-leg:left")).isEqualTo(90);
        assertThat(ill("peripheral-arterial-disease", Side.LEFT).amount("raised-leg:left"))
                .isBetween(20.0, 70.0);
        assertThat(ill("critical-limb-ischaemia", Side.LEFT).amount("raised-leg:left"))
                .isLessThan(20);
    }

    /** Common practice, no source: pulseless, pale, cold, numb and weak; the other leg is well. */
    @Test
    void aLegThatLosesItsBloodAtOnceIsColdPulselessAndNumb() {
        Bedside patient = ill("acute-limb-ischaemia", Side.LEFT);

        assertThat(patient.word("foot-warmth:left")).isEqualTo("cold");
        assertThat(patient.word("groin-pulse:left@femoral")).isEqualTo("0");
        assertThat(patient.amount("toe-refill:left")).isGreaterThan(5);
        assertThat(normal(patient.sign("ankle-dorsiflexion:left"))).isFalse();
        assertThat(normal(patient.sign("foot-warmth:right"))).isTrue();
    }

    /** Pitting oedema scale 2/3-4/5-6/8 mm with rebound times (secondary): at once, under 15 s, 15-60 s, over 60 s. */
    @ParameterizedTest
    @CsvSource({"2,0,4", "4,3,15", "6,15,60", "8,60,300"})
    void aDentFillsInTheTimeOfItsDepth(double mm, double least, double most) {
        Bedside patient = Bedside.healthy(50).shift("leg.left.inflamed", mm / 5 > 1 ? 1 : mm / 5);
        double deep = patient.amount("oedema-depth:left@ankle");
        if (mm > 5) {
            patient = patient.shift("vein.left.thigh.block", (mm - 5) / (0.9 * 12) + 0.25);
            deep = patient.amount("oedema-depth:left@ankle");
        }
        assertThat(deep).isCloseTo(mm, within(0.5));
        List<Double> curve = patient.curve("oedema-depth:left@ankle", "dent");
        double begins = curve.get(0);
        long seconds = curve.stream().filter(d -> d > 0.05 * begins).count() - 1;
        assertThat(seconds).isBetween((long) least, (long) most);
    }

    /** Common practice, no source. Local causes swell one leg, those of the whole body both. */
    @ParameterizedTest
    @CsvSource({
        "right-heart-failure,NONE,true,true",
        "nephrotic-syndrome,NONE,true,true",
        "cirrhosis-ascites,NONE,true,true",
        "deep-vein-thrombosis,LEFT,false,true",
        "cellulitis,LEFT,false,true",
        "venous-insufficiency,LEFT,false,true",
        "lymphoedema,LEFT,false,false",
        "cardiac-tamponade,NONE,false,false"
    })
    void whatSwellsOneLegAndWhatBoth(String condition, Side side, boolean right, boolean left) {
        Bedside patient = ill(condition, side);
        assertThat(!normal(patient.sign("oedema-depth:right@ankle"))).isEqualTo(right);
        assertThat(!normal(patient.sign("oedema-depth:left@ankle"))).isEqualTo(left);
    }

    /** From memory: 3 cm between the calves counts in the rules for clots; lymphoedema thickens and hardly pits. */
    @Test
    void aClotAndBlockedLymphThickenTheCalf() {
        for (String condition : List.of("deep-vein-thrombosis", "lymphoedema")) {
            Bedside patient = ill(condition, Side.RIGHT);
            assertThat(patient.amount("calf-girth:right") - patient.amount("calf-girth:left"))
                    .as(condition)
                    .isGreaterThanOrEqualTo(3);
            assertThat(normal(patient.sign("calf-girth:right"))).isFalse();
            assertThat(normal(patient.sign("calf-girth:left"))).isTrue();
        }
    }

    /** Common practice, no source: pallor, jaundice and central cyanosis are sought where no pigment covers the blood. */
    @ParameterizedTest
    @EnumSource(SkinTone.class)
    void liningWhitesAndTongueShowInEverySkinWhatTheDarkFaceHides(SkinTone tone) {
        boolean dark = tone == SkinTone.DARK;
        Bedside pale = in(tone).shift("blood.haemoglobin", -70);
        assertThat(pale.word("lid-colour")).isEqualTo("pale");
        assertThat(pale.word("face-colour")).isEqualTo(tone == SkinTone.LIGHT ? "pale" : "own");
        Bedside yellow = in(tone).shift("skin.bilirubin", 150);
        assertThat(yellow.word("eye-white-colour")).isEqualTo("yellow");
        assertThat(yellow.word("face-colour")).isEqualTo(dark ? "own" : "yellow");
        Bedside blue = in(tone).shift("blood.saturation", -18);
        assertThat(blue.word("tongue-colour")).isEqualTo("blue");
        assertThat(blue.word("face-colour")).isEqualTo("own");
    }

    /** From memory: cyanosis is a matter of the amount of spent haemoglobin, so anaemia hides and thick blood shows it. */
    @Test
    void thickBloodIsBlueAtASaturationAtWhichThinBloodIsNot() {
        Bedside short88 = in(SkinTone.LIGHT).shift("blood.saturation", -9);
        assertThat(short88.word("tongue-colour")).isEqualTo("own");
        assertThat(short88.shift("blood.haemoglobin", 50).word("tongue-colour")).isEqualTo("blue");
        assertThat(in(SkinTone.LIGHT)
                        .shift("blood.saturation", -18)
                        .shift("blood.haemoglobin", -70)
                        .word("tongue-colour"))
                .isEqualTo("pale");
    }

    /** Common practice, no source: cold hands are blue while the tongue is not. */
    @Test
    void slowBloodTurnsTheNailsBlueOrPaleAndLeavesTheTongue() {
        Bedside patient = in(SkinTone.LIGHT).condition("hypothermia", Side.NONE);
        assertThat(patient.word("nail-bed-colour:right")).isNotEqualTo("own");
        assertThat(patient.word("tongue-colour")).isEqualTo("own");
    }

    /** Ellul, Cross & Larner 2017, Pract Neurol 17:60 (abstract): liver, carbon dioxide, uraemia. */
    @ParameterizedTest
    @ValueSource(strings = {"acute-liver-failure", "carbon-dioxide-retention", "kidney-failure"})
    void handsFlapWhereLiverLungsOrKidneysFail(String condition) {
        Bedside patient = ill(condition);
        assertThat(patient.word("outstretched-hands")).isEqualTo("drops");
        double lowest = patient.curve("outstretched-hands", "wrist bent back").stream()
                .mapToDouble(d -> d)
                .min()
                .orElseThrow();
        assertThat(lowest).isLessThan(40);
    }

    /** From memory: from 180 degrees on the angle is lost. */
    @ParameterizedTest
    @ValueSource(strings = {"bronchial-tumour", "bronchiectasis", "pulmonary-fibrosis", "cyanotic-heart-disease"})
    void fingersAreClubbedInDiseaseOfLungAndHeart(String condition) {
        var held = Bedside.REFERENCE.conditions().condition(condition).orElseThrow();
        Bedside patient = ill(condition, held.sided() ? Side.LEFT : Side.NONE);
        assertThat(patient.amount("nail-profile")).isGreaterThan(180);
        assertThat(patient.meaning("nail-profile")).isEqualTo("clubbing");
    }

    /** Udell 2012, JAMA 307:832 (abstract), and a table of likelihood ratios: spiders and red palms go with cirrhosis. */
    @Test
    void cirrhosisShowsInHandsSkinAndLegs() {
        Bedside patient = ill("cirrhosis-ascites");
        assertThat(patient.amount("spider-naevi")).isGreaterThanOrEqualTo(5);
        assertThat(patient.word("palm-colour")).isEqualTo("red");
        assertThat(patient.word("eye-white-colour")).isEqualTo("yellow");
        assertThat(patient.amount("oedema-depth:left@ankle")).isGreaterThan(2);
    }

    /** Common practice, no source: shut-down skin is cool and slow to refill; sepsis and carbon dioxide warm it. */
    @Test
    void theSkinTellsAnEmptyCirculationFromAWideOne() {
        Bedside bled = ill("blood-loss");
        assertThat(bled.word("hand-warmth:left")).isEqualTo("cool");
        assertThat(bled.amount("finger-refill:left")).isGreaterThan(2.5);
        assertThat(ill("sepsis").word("hand-warmth:left")).isEqualTo("hot");
        assertThat(ill("dehydration").amount("skin-fold")).isGreaterThan(2);
        assertThat(Bedside.healthy(90).amount("skin-fold"))
                .isGreaterThan(Bedside.healthy(30).amount("skin-fold"));
    }

    /** From memory: a torn tendon spares what the examiner can move, a tight capsule does not, and takes outward turning most. */
    @Test
    void aTornTendonSparesThePassiveRangeAndAFrozenShoulderDoesNot() {
        Bedside torn = ill("rotator-cuff-tear", Side.RIGHT);
        assertThat(normal(torn.sign("active-range:right@shoulder-abduction"))).isFalse();
        assertThat(normal(torn.sign("passive-range:right@shoulder-abduction"))).isTrue();
        Bedside frozen = ill("frozen-shoulder", Side.RIGHT);
        assertThat(normal(frozen.sign("passive-range:right@shoulder-abduction")))
                .isFalse();
        double outward = frozen.amount("passive-range:right@shoulder-outward-turn")
                / Bedside.healthy(58).amount("passive-range:right@shoulder-outward-turn");
        double lifted = frozen.amount("passive-range:right@shoulder-abduction")
                / Bedside.healthy(58).amount("passive-range:right@shoulder-abduction");
        assertThat(outward).isLessThan(lifted);
        assertThat(normal(frozen.sign("joint-grating:right@shoulder"))).isTrue();
    }

    /** From memory: the bulge shows a few millilitres, the tap needs more, and a tense knee no longer bulges. */
    @ParameterizedTest
    @CsvSource({"0,stays-hollow,rests", "10,bulges,rests", "40,bulges,taps", "90,stays-hollow,taps"})
    void fluidInTheKnee(double ml, String bulge, String tap) {
        Bedside patient = Bedside.healthy(40).shift("joint.right.knee.fluid", ml);
        assertThat(patient.word("knee-bulge:right")).isEqualTo(bulge);
        assertThat(patient.word("kneecap-tap:right")).isEqualTo(tap);
        assertThat(patient.word("knee-bulge:left")).isEqualTo("stays-hollow");
    }

    /** Common practice, no source: knuckles and middle joints on both sides, not the end joints; worn hands the reverse. */
    @Test
    void inflamedAndWornHandsTakeDifferentJoints() {
        Bedside inflamed = ill("early-rheumatoid-arthritis");
        Bedside worn = Bedside.healthy(70)
                .ailing(Bedside.REFERENCE
                        .conditions()
                        .ailment(
                                Bedside.REFERENCE
                                        .conditions()
                                        .condition("osteoarthritis")
                                        .orElseThrow(),
                                Side.RIGHT,
                                Optional.of("hand"),
                                1,
                                Optional.empty()));
        for (String side : List.of("right", "left")) {
            assertThat(inflamed.word("joint-look:" + side + "@knuckles")).isEqualTo("swollen");
            assertThat(inflamed.word("joint-look:" + side + "@finger-ends")).isEqualTo("usual");
            assertThat(inflamed.word("joint-warmth:" + side + "@knuckles")).isEqualTo("warm");
        }
        assertThat(worn.word("joint-look:right@finger-ends")).isEqualTo("knobbly");
        assertThat(worn.word("joint-look:right@knuckles")).isEqualTo("usual");
        assertThat(worn.word("joint-warmth:right@finger-ends")).isEqualTo("as-around");
    }

    /** Common practice, no source. */
    @Test
    void whoIsHardOfHearingSaysSo() {
        Bedside deaf = Bedside.healthy(50).lesion("cochlea left", 1, "3 years");
        assertThat(deaf.word("asked-hearing")).isEqualTo("left-worse");
        assertThat(deaf.show("asked-hearing", Map.of()).words()).contains("right is my good ear");
        assertThat(deaf.meaning("asked-hearing")).isEqualTo("inner-ear-loss");
    }

    /** BMI is weight over the square of the height: what is shown leads to what is read. */
    @Test
    void theIndexFollowsFromTheHeightAndWeightThatAreShown() {
        Bedside patient = ill("obesity");
        var shown = patient.show("weight-for-height", Map.of()).measures();
        double metres = shown.get(0).amount() / 100;
        assertThat(shown.get(1).amount() / (metres * metres))
                .isCloseTo(patient.amount("weight-for-height"), within(0.1));
    }
}

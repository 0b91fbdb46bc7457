package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Variation;

/** Statements of the literature about the heart. */
class HeartChecksTest {
    private static Bedside with(String condition) {
        return Bedside.healthy(60).condition(condition, Side.NONE);
    }

    /** Roy 2007, JAMA 297:1810. */
    @Test
    @DisplayName(
            "X56 a fall of more than 10 mmHg on breathing in is a pulsus paradoxus; with an effusion 10 or less speaks against tamponade")
    void theSystolicPressureFallsByMoreThanTenOnBreathingInInTamponadeOnly() {
        for (long seed = 0; seed < 40; seed++) {
            Bedside healthy = Bedside.person(60, Variation.of(seed));
            Bedside pressed = healthy.condition("cardiac-tamponade", Side.NONE);
            Bedside slight = healthy.shift("pericardial-fluid", 0.15);

            assertThat(pressed.amount("pulse-in-breathing")).isGreaterThan(10);
            assertThat(pressed.sign("pulse-in-breathing").normal()).contains(false);
            assertThat(slight.amount("pulse-in-breathing")).isLessThanOrEqualTo(10);
            assertThat(healthy.sign("pulse-in-breathing").normal()).contains(true);
        }
    }

    /** Lembo 1988, NEJM 318:1572. */
    @Test
    @DisplayName(
            "X67 strain and standing make the murmur of outflow obstruction louder, squatting and raised legs softer; that of aortic stenosis is softer on straining")
    void obstructionBelowTheValveAnswersTheOtherWayRound() {
        Bedside below = with("obstructive-cardiomyopathy");

        assertThat(below.word("murmur-on-straining")).isEqualTo("louder");
        assertThat(below.word("murmur-on-standing")).isEqualTo("louder");
        assertThat(below.word("murmur-on-squatting")).isEqualTo("softer");
        assertThat(below.word("murmur-with-raised-legs")).isEqualTo("softer");
        assertThat(with("aortic-stenosis").word("murmur-on-straining")).isEqualTo("softer");
    }

    /** Etchells 1998, JGIM 13:699; Etchells 1997: LR- 0.10 without, and a murmur there alone does not prove it. */
    @Test
    @DisplayName("X68 aortic stenosis is heard over the right clavicle; other things can be heard there too")
    void aMurmurMissingOverTheRightClavicleSpeaksAgainstAorticStenosis() {
        for (long seed = 0; seed < 40; seed++) {
            assertThat(Bedside.person(70, Variation.of(seed))
                            .condition("aortic-stenosis", Side.NONE)
                            .word("murmur-spread@clavicle"))
                    .isEqualTo("heard");
        }
        assertThat(with("patent-duct").word("murmur-spread@clavicle")).isEqualTo("heard");
        assertThat(with("aortic-sclerosis").word("murmur-spread@clavicle")).isEqualTo("none");
    }

    /** Lembo 1988, NEJM 318:1572: sensitivity 100, specificity 88. */
    @Test
    @DisplayName("X69 murmurs of the right side are louder on breathing in, those of the left are not")
    void aBreathInMakesMurmursOfTheRightSideLouder() {
        for (String right : List.of("tricuspid-regurgitation", "pulmonary-stenosis", "tricuspid-narrowing")) {
            assertThat(with(right).word("murmur-on-breathing-in")).as(right).isEqualTo("louder");
        }
        for (String left : List.of(
                "aortic-stenosis",
                "mitral-regurgitation",
                "mitral-stenosis",
                "mitral-prolapse",
                "obstructive-cardiomyopathy",
                "ventricular-septal-defect",
                "aortic-regurgitation")) {
            assertThat(with(left).word("murmur-on-breathing-in")).as(left).isNotEqualTo("louder");
        }
    }

    /** Williams, Clinical Methods (3rd ed.), The fourth heart sound. */
    @Test
    @DisplayName("X70 no fourth sound is told or sounded in atrial fibrillation, whatever else ails the heart")
    void withoutAtriaThereIsNoFourthSound() {
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            if (condition.sided() || !condition.levels().isEmpty()) {
                continue;
            }
            Bedside patient = with(condition.id()).condition("atrial-fibrillation", Side.NONE);
            for (String place : List.of("mitral", "tricuspid")) {
                assertThat(patient.word("filling-sounds@" + place))
                        .as(condition.id())
                        .isNotIn("fourth", "both");
            }
        }
        Bedside stiff = Bedside.healthy(60).shift("left-ventricle-stiffness", 1);
        Bedside fibrillating = stiff.condition("atrial-fibrillation", Side.NONE);
        assertThat(stiff.curve("filling-sounds@mitral", "low thuds")).anyMatch(height -> height > 0.1);
        assertThat(fibrillating.curve("filling-sounds@mitral", "low thuds")).allMatch(height -> height < 0.01);
    }

    /** Wang 2005, JAMA 294:1944: LR+ 11 in the breathless. */
    @Test
    @DisplayName("X71 among the breathless a third sound is at least eleven times as frequent in heart failure")
    void aThirdSoundTellsHeartFailureFromOtherCausesOfBreathlessness() {
        double failing = share(List.of("left-heart-failure", "pulmonary-oedema", "severe-pulmonary-oedema"));
        double others = share(List.of(
                "emphysema",
                "asthma",
                "chronic-bronchitis",
                "pulmonary-fibrosis",
                "severe-anaemia",
                "bronchopneumonia"));

        assertThat(failing).isGreaterThan(0.5);
        assertThat(failing).isGreaterThanOrEqualTo(11 * others);
    }

    private static double share(List<String> conditions) {
        int heard = 0;
        int all = 0;
        for (String condition : conditions) {
            for (long seed = 0; seed < 20; seed++) {
                Bedside patient =
                        Bedside.person(45 + (int) seed, Variation.of(seed)).condition(condition, Side.NONE);
                heard += patient.word("filling-sounds@mitral").equals("third") ? 1 : 0;
                all++;
            }
        }
        return heard / (double) all;
    }

    /** Harrison's Manual: 30 to 35, McGee: about 40: until then a third sound may belong to health. */
    @Test
    void someOfTheYoungHaveAThirdSoundInHealthAndNoneOfTheOldHave() {
        int young = 0;
        for (long seed = 1; seed <= 60; seed++) {
            Bedside person = Bedside.person(21, Variation.of(seed));
            young += person.word("filling-sounds@mitral").equals("third") ? 1 : 0;
            assertThat(person.sign("filling-sounds@mitral").normal()).contains(true);
            assertThat(Bedside.person(45, Variation.of(seed)).word("filling-sounds@mitral"))
                    .isEqualTo("none");
        }
        assertThat(young).isBetween(1, 30);
    }

    /** Biomed Res Int 2020:5846191 Table 1: third sound 120 to 180 ms after the second, fourth 50 to 120 before the first. */
    @Test
    void soundsOfFillingComeWhenTheTableSays() {
        Bedside weak = with("left-heart-failure");
        Bedside stiff = Bedside.healthy(60).shift("left-ventricle-stiffness", 1);

        assertThat(gap(weak, true)).isBetween(120.0, 180.0);
        assertThat(gap(stiff, false)).isBetween(50.0, 130.0);
    }

    /** From the second sound to the low thud, or from the low thud to the first sound, ms, at the apex. */
    private static double gap(Bedside patient, boolean afterSecond) {
        List<Double> low = patient.curve("filling-sounds@mitral", "low thuds", Map.of());
        List<Double> thumps = patient.curve("filling-sounds@mitral", "thumps", Map.of());
        int thud = 300;
        while (low.get(thud) < 0.1) {
            thud++;
        }
        int step = afterSecond ? -1 : 1;
        int at = thud;
        while (thumps.get(at) < 0.3) {
            at += step;
        }
        return Math.abs(at - thud) * HeartClip.FINE_MS;
    }

    /** Am Fam Physician 2011; MSD Manual: the split of a hole between the atria varies by less than 10 ms. */
    @Test
    void theFixedSplitMovesByLessThanTenMillisecondsAndTheHealthyOneByMore() {
        var fixed = HeartSounds.splits(with("atrial-septal-defect"));
        var healthy = HeartSounds.splits(Bedside.healthy(60));

        assertThat(Math.abs(fixed.in() - fixed.out())).isLessThan(10);
        assertThat(fixed.out()).isBetween(50.0, 80.0);
        assertThat(healthy.out()).isBetween(0.0, 20.0);
        assertThat(healthy.in()).isBetween(30.0, 60.0);
    }
}

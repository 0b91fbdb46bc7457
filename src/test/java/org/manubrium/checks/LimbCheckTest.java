package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.checks.Patient.REFERENCE;
import static org.manubrium.checks.Patient.healthy;
import static org.manubrium.checks.Patient.person;
import static org.manubrium.checks.Patient.with;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/** Bulk, tone, coordination, standing, walking, reflexes of the skin, cortical feeling and functional signs. */
class LimbCheckTest {
    private static final Set<String> READERS = Set.of("limb", "muscle", "spasticity");

    private static List<Manoeuvre> limbs() {
        return REFERENCE.examination().manoeuvres().stream()
                .filter(m -> READERS.contains(m.reader()))
                .toList();
    }

    private static Body ailing(Condition condition) {
        Side side = condition.sided() ? Side.LEFT : Side.NONE;
        Optional<String> level = condition.levels().stream().findFirst();
        return healthy()
                .body()
                .with(List.of(REFERENCE.conditions().ailment(condition, side, level, 1, Optional.empty())));
    }

    @Test
    void healthyPeopleOfAnyAgeAreNormalInEverything() {
        for (int age = 20; age <= 90; age += 10) {
            Body body = person(age, 11 * age + 1).body();
            for (Manoeuvre manoeuvre : limbs()) {
                assertThat(REFERENCE.signs().examine(body, manoeuvre))
                        .allSatisfy(sign -> assertThat(sign.normal())
                                .as(sign.item().toString())
                                .contains(true));
            }
        }
    }

    /** What is shown follows from the finding alone, and its names and lengths from the manoeuvre alone. */
    @Test
    void theSameFindingLooksTheSameWhateverCausesIt() {
        Map<String, Appearance> seen = new HashMap<>();
        Map<String, String> shapes = new HashMap<>();
        for (Condition condition : REFERENCE.conditions().all()) {
            Body body = ailing(condition);
            for (Manoeuvre manoeuvre : limbs()) {
                for (Item item : Examination.items(manoeuvre)) {
                    Probe probe = Signs.usual(manoeuvre, item);
                    Finding finding = REFERENCE.signs().finding(body, probe);
                    Appearance shown = REFERENCE.signs().show(body, probe);
                    Appearance before = seen.putIfAbsent(item + "/" + finding, shown);
                    assertThat(before == null ? shown : before)
                            .as(condition.id() + " " + item)
                            .isEqualTo(shown);
                    String shape = shape(shown);
                    String was = shapes.putIfAbsent(manoeuvre.id(), shape);
                    assertThat(was == null ? shape : was)
                            .as(condition.id() + " " + item)
                            .isEqualTo(shape);
                }
            }
        }
    }

    private static String shape(Appearance shown) {
        StringBuilder text = new StringBuilder(shown.sign());
        shown.curves()
                .forEach(c -> text.append('|')
                        .append(c.name())
                        .append(c.unit())
                        .append(c.samples().size()));
        shown.measures().forEach(m -> text.append('|').append(m.label()).append(m.unit()));
        return text.toString();
    }

    /** Every word that is read stands on the manoeuvre's scale, so that a student can choose it. */
    @Test
    void everyFindingIsOnItsScale() {
        for (Condition condition : REFERENCE.conditions().all()) {
            Body body = ailing(condition);
            for (Manoeuvre manoeuvre : limbs()) {
                for (var sign : REFERENCE.signs().examine(body, manoeuvre)) {
                    if (sign.finding() instanceof Finding.Seen word) {
                        assertThat(REFERENCE
                                        .examination()
                                        .scale(manoeuvre.scale())
                                        .rank(word.code()))
                                .as(condition.id() + " " + sign.item() + " " + word.code())
                                .isNotNegative();
                    }
                }
            }
        }
    }

    @Test
    void everyAbnormalFindingOfAConditionIsExplained() {
        for (Condition condition : REFERENCE.conditions().all()) {
            Body body = ailing(condition);
            for (Manoeuvre manoeuvre : limbs()) {
                for (var sign : REFERENCE.signs().examine(body, manoeuvre)) {
                    assertThat(sign.meaning().term())
                            .as(condition.id() + " " + sign.item())
                            .isNotEqualTo("unexplained");
                }
            }
        }
    }

    @Test
    void mirroringThePatientMirrorsEverySidedFinding() {
        for (Condition condition : REFERENCE.conditions().all()) {
            Body body = ailing(condition);
            Body mirror = body.mirrored();
            for (Manoeuvre manoeuvre : limbs()) {
                for (Item item : Examination.items(manoeuvre)) {
                    Finding here = REFERENCE.signs().finding(body, Signs.usual(manoeuvre, item));
                    Finding there = REFERENCE.signs().finding(mirror, Signs.usual(manoeuvre, item.mirrored()));
                    assertThat(there.toString()).as(condition.id() + " " + item).isEqualTo(exchanged(here.toString()));
                }
            }
        }
    }

    private static String exchanged(String text) {
        return text.replace("right", "@").replace("left", "right").replace("@", "left");
    }

    /** X17: secondary text on the supinator reflex. Seen in a secondary text; composite. The fingers answer, the jaw does not. */
    @Test
    void x17FingersAnswerTheTapOnTheRadiusAndTheJawIsUsual() {
        Patient patient = with("spinal cord C5-C6");
        assertThat(patient.read("radius-tap:right")).isEqualTo("fingers");
        patient.kept("jaw-jerk");
    }

    /** X21: spinal cord syndromes notes (secondary, 2010). Seen; composite. */
    @Test
    void x21BackOfTheCordFallsWithEyesShut() {
        assertThat(with("spinal cord T8 posterior").read("romberg")).isEqualTo("falls-eyes-shut");
    }

    /** X22: lateral medullary syndrome table (secondary). Seen by reference. */
    @Test
    void x22SideOfTheMedullaMakesItsOwnLimbsClumsyAndKeepsPower() {
        Patient patient = with("lateral medulla right");
        assertThat(patient.read("finger-nose:right")).isEqualTo("zigzag");
        assertThat(patient.read("finger-nose:left")).isEqualTo("true");
        patient.kept("elbow-flexion:right");
    }

    /** X79: Teitelbaum 2002, Can J Neurol Sci 29:337. Seen. Drift shows a slight lesion that power misses. */
    @Test
    void x79SlightCapsularLesionDriftsWhileSegmentalPowerIsFull() {
        Patient patient = healthy().and("internal capsule right", 0.13, "3 weeks");
        assertThat(patient.read("pronator-drift:left")).isEqualTo("sinks-turning");
        patient.kept("elbow-extension:left", "shoulder-abduction:left", "finger-extension:left");
    }

    /** X80: McWhirter 2011, J Psychosom Res 71:384; Daum 2014. Seen in a secondary text. */
    @Test
    void x80FunctionalWeaknessReturnsAndAnOrganicOneDoesNotAndNothingSaysDeceit() {
        Patient functional = healthy().shifted("attended.left.leg", 0.75);
        assertThat(functional.read("hoover:left")).isEqualTo("returns");
        assertThat(with("internal capsule right").read("hoover:left")).isEqualTo("weak-both");
        assertThat(functional.sign("hoover:left").meaning().text()).contains("not deceit");
        assertThat(Patient.manoeuvre("hoover").technique()).contains("63 %").contains("100 %");
    }

    /** X81: Daum 2014, JNNP 85:180. Seen. The same patient walks otherwise when it is not asked for. */
    @Test
    void x81FunctionalLegIsDraggedOnlyWhileAskedToWalk() {
        Patient patient = healthy().shifted("attended.left.leg", 0.75);
        assertThat(patient.read("gait")).isEqualTo("dragging-left");
        assertThat(patient.read("gait-unwatched")).isEqualTo("usual");
    }

    /** X23: Curr Neurol Neurosci Rep 2014. Seen in a secondary text; composite. */
    @Test
    void x23LongNervesToTheKneesLoseTheStockingAndTheAnkleReflexAndKeepKneeAndHands() {
        Patient patient = with("long nerves to the knees both");
        for (String side : List.of("right", "left")) {
            patient.lost("pin:" + side + "@s1-lateral-heel", "pin:" + side + "@l4-inner-ankle", "ankle-reflex:" + side);
            patient.kept("knee-reflex:" + side, "pin:" + side + "@c6-thumb", "pin:" + side + "@l2-inner-thigh");
            patient.kept("ankle-plantar-flexion:" + side);
        }
    }

    /** Spinal cord syndromes notes (secondary, 2010): silent and floppy for days to weeks, then brisk. */
    @Test
    void cordAtT8IsFloppyAtSixHoursAndCatchesAtThreeMonths() {
        Patient fresh = healthy().and("spinal cord T8", 1, "6 hours");
        Patient old = healthy().and("spinal cord T8", 1, "3 months");
        assertThat(fresh.read("tone-knee:right")).isEqualTo("floppy");
        assertThat(fresh.read("anal-wink")).isEqualTo("still");
        assertThat(old.read("tone-knee:right")).isEqualTo("catch");
        assertThat(old.read("anal-wink")).isEqualTo("draws-in");
        assertThat(old.read("abdominal-lower:right")).isEqualTo("still");
    }

    /** Deluca 2012; Clinical study of the vermis. Seen. */
    @Test
    void hemisphereIsItsOwnSideAndVermisIsTheTrunkAlone() {
        Patient hemisphere = with("cerebellar hemisphere left");
        assertThat(hemisphere.read("heel-shin:left")).isEqualTo("zigzag");
        assertThat(hemisphere.read("heel-shin:right")).isEqualTo("true");
        Patient vermis = with("cerebellar vermis");
        assertThat(vermis.read("heel-shin:left")).isEqualTo("true");
        assertThat(vermis.read("romberg")).isEqualTo("unsteady-eyes-open");
        assertThat(vermis.read("gait")).isEqualTo("wide");
    }

    @Test
    void wastingNeedsMonths() {
        Patient week = healthy().and("root T1 right", 1, "1 week");
        Patient year = healthy().and("root T1 right", 1, "1 year");
        assertThat(week.read("muscle-bulk:right@first-dorsal-interosseous")).isEqualTo("full");
        assertThat(year.read("muscle-bulk:right@first-dorsal-interosseous")).isEqualTo("wasted");
    }

    @Test
    void eachLesionGivesItsWalk() {
        assertThat(with("internal capsule right").read("gait")).isEqualTo("swinging-round-left");
        assertThat(with("common fibular nerve left at fibular neck").read("gait"))
                .isEqualTo("dropped-left");
        assertThat(with("spinal cord T8 posterior").read("gait")).isEqualTo("stamping");
        assertThat(with("substantia nigra both").read("gait")).isEqualTo("shuffling");
        assertThat(with("superior gluteal nerve right").read("trendelenburg:right"))
                .isEqualTo("drops");
        assertThat(healthy().and("proximal muscles both", 0.6, "6 months").read("gait"))
                .isEqualTo("waddling");
    }

    private static Body ailing(String condition) {
        return ailing(REFERENCE.conditions().condition(condition).orElseThrow());
    }

    private static String term(Body body, String item) {
        return new Patient(body).sign(item).meaning().term();
    }

    /** Common practice, no source: one disease of two tracts and the nerves; each sign is owed to one of the three. */
    @Test
    void combinedDegenerationOwesEachSignToTheWayThatMakesIt() {
        Body body = ailing("combined-degeneration");
        assertThat(term(body, "knee-reflex:right")).isEqualTo("upper-motor-neurone");
        assertThat(term(body, "ankle-reflex:right")).isEqualTo("reflex-arc-nerve");
        assertThat(term(body, "plantar-response:right")).isEqualTo("upper-motor-neurone");
        assertThat(term(body, "vibration:right@l3-inner-knee")).isEqualTo("feeling-cord");
        assertThat(term(body, "pin:right@s1-lateral-heel")).isEqualTo("feeling-nerve");
        assertThat(term(body, "romberg")).isEqualTo("position-cord");
    }

    /** Common practice, no source: above the lost horn cells the reflexes are lost, below them brisk. */
    @Test
    void motorNeuroneDiseaseOwesTheHandToTheHornAndTheLegToTheTract() {
        Body body = ailing("motor-neurone-disease");
        assertThat(term(body, "index-finger-abduction:left")).isEqualTo("weak-horn");
        assertThat(term(body, "knee-reflex:left")).isEqualTo("upper-motor-neurone");
        assertThat(term(body, "plantar-response:left")).isEqualTo("upper-motor-neurone");
    }

    @Test
    void aMeaningNamesOnlyTheSitesToWhichTheSignIsOwed() {
        assertThat(new Patient(ailing("combined-degeneration"))
                        .sign("knee-reflex:right")
                        .meaning()
                        .sites())
                .extracting(Site::structure)
                .containsOnly("lateral corticospinal tract");
    }

    /** Rao 2003, JAMA 289:347 (abstract): reduced arm swing, asymmetric at first. The side named is that of the limbs. */
    @Test
    void parkinsonsDiseaseStillsTheArmOfItsOwnSide() {
        Condition parkinson =
                REFERENCE.conditions().condition("parkinsons-disease").orElseThrow();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            Patient patient = new Patient(healthy()
                    .body()
                    .with(List.of(
                            REFERENCE.conditions().ailment(parkinson, side, Optional.empty(), 1, Optional.empty()))));
            assertThat(patient.read("gait")).isEqualTo("shuffling-" + side.word());
            assertThat(patient.read("tremor-at-rest:" + side.word())).isEqualTo("slow-coarse");
            assertThat(patient.read("tremor-at-rest:" + side.opposite().word())).isEqualTo("none");
        }
        assertThat(healthy().and("substantia nigra left", 0.45, "1 year").read("gait"))
                .isEqualTo("arm-still-right");
    }

    /** Merritt's Neurology Handbook, 2nd ed., ch. 11: the bent arm goes with the stiff leg when the lesion is above both. */
    @Test
    void aStiffLegHasABentArmOnlyWhenTheLesionIsAboveTheArm() {
        assertThat(healthy().and("internal capsule right", 0.6, "1 year").read("gait"))
                .isEqualTo("swinging-round-left");
        assertThat(healthy().and("spinal cord T8 left half", 0.7, "1 year").read("gait"))
                .isEqualTo("leg-swung-round-left");
    }

    /** From memory: a leg that neither hip nor knee can hold straight carries nobody. */
    @Test
    void aLegWithoutItsRootsCarriesNobody() {
        Patient patient = with("root L2 left");
        for (String root : List.of("L3", "L4", "L5", "S1", "S2")) {
            patient = patient.and("root " + root + " left");
        }
        assertThat(patient.read("gait")).isEqualTo("cannot-walk");
    }

    /** One numb finger does not lose the hand with the eyes shut, the dorsal columns do (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "median nerve at the wrist left, true",
        "ulnar nerve at the wrist left, true",
        "spinal cord C3 posterior, lost-eyes-shut"
    })
    void theHandIsLostInTheDarkWithTheWholeArmsPositionSense(String site, String reading) {
        assertThat(with(site).read("finger-nose:left")).isEqualTo(reading);
    }
}

package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Sign;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/**
 * What the shipped patients show. Common practice, no source, unless a source is named: the picture that a clinician expects
 * of the disease.
 */
class ShippedPatientsTest {
    private static final Reference REFERENCE = Tables.shipped();

    /** Every sign of a shipped patient by its item, written "ankle-reflex:right". */
    private record Chart(Map<String, Sign> signs) {
        static Chart of(String slug) {
            try {
                String text = Files.readString(Path.of("cases", slug + ".yaml"));
                CaseFile file = CaseFile.read(text, slug, REFERENCE).caseFile().orElseThrow();
                Map<String, Sign> found = new HashMap<>();
                REFERENCE
                        .signs()
                        .examine(file.body(REFERENCE))
                        .forEach(sign -> found.put(sign.item().toString(), sign));
                return new Chart(found);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private Sign sign(String item) {
            assertThat(signs).containsKey(item);
            return Objects.requireNonNull(signs.get(item));
        }

        Chart reads(String reading, String... items) {
            for (String item : items) {
                Reading read = sign(item).reading();
                String word = read instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) read).seen();
                assertThat(word).as(item).isEqualTo(reading);
            }
            return this;
        }

        Chart reads(double least, double most, String item) {
            assertThat(((Reading.Amount) sign(item).reading()).value()).as(item).isBetween(least, most);
            return this;
        }

        Chart normal(String... items) {
            for (String item : items) {
                assertThat(sign(item).normal()).as(item).contains(true);
            }
            return this;
        }

        Chart abnormal(String... items) {
            for (String item : items) {
                assertThat(sign(item).normal()).as(item).contains(false);
            }
            return this;
        }

        Chart means(String term, String... items) {
            for (String item : items) {
                assertThat(sign(item).meaning().term()).as(item).isEqualTo(term);
            }
            return this;
        }
    }

    @Test
    void cookHasBriskKneesAbsentAnklesAndToesThatGoUp() {
        Chart.of("cook")
                .reads("4", "knee-reflex:right", "knee-reflex:left")
                .reads("0", "ankle-reflex:right", "ankle-reflex:left")
                .reads("extensor", "plantar-response:right", "plantar-response:left")
                .reads("absent", "vibration:right@l3-inner-knee", "joint-position:left@sole")
                .reads("falls-eyes-shut", "romberg")
                .normal("biceps-reflex:right", "pin:left@c6-thumb", "finger-nose:left");
    }

    @Test
    void calligrapherIsStiffAndSlowOnTheLeftAndShakesThereAtRest() {
        Chart.of("calligrapher")
                .reads("jerky-all-through", "tone-wrist:left")
                .reads("dwindling", "finger-tapping:left")
                .reads("slow-coarse", "tremor-at-rest:left")
                .normal("tremor-at-rest:right", "plantar-response:left", "elbow-flexion:left", "knee-reflex:left");
    }

    /** Spinal cord syndromes notes (secondary, 2010): silent and floppy for days to weeks. */
    @Test
    void signalmanIsSilentBelowTheNavelAndHisToesDoNotMove() {
        Chart.of("signalman")
                .reads("0", "knee-reflex:right", "ankle-reflex:left", "hip-flexion:right", "pin:left@l1-upper-thigh")
                .reads("mute", "plantar-response:right", "plantar-response:left")
                .reads("floppy", "tone-knee:right")
                .means("spinal-shock", "knee-reflex:right", "plantar-response:left", "anal-wink")
                .means("shock-tone", "tone-knee:right")
                .normal("finger-flexion:right", "triceps-reflex:left", "pin:right@t8-halfway-to-navel");
    }

    /** X22: lateral medullary syndrome table (secondary). Seen by reference. */
    @Test
    void cellistHasTheFaceOfOneSideAndTheBodyOfTheOther() {
        Chart.of("cellist")
                .reads("0", "face-pin:left@cheek", "pin:right@c6-thumb", "pin:right@l4-inner-ankle")
                .normal("face-pin:right@cheek", "pin:left@c6-thumb", "vibration:right@l4-inner-ankle")
                .normal("elbow-flexion:left", "elbow-flexion:right", "plantar-response:right", "object-in-hand:right")
                .reads("to-right", "palate-rise")
                .reads("zigzag", "finger-nose:left")
                .abnormal("lid-height:left", "pupil-size-dark:left", "corneal-reflex:left", "gag-reflex:left");
    }

    @Test
    void bellringerMissesWithTheRightAndLosesNeitherPowerNorFeeling() {
        Chart.of("bellringer")
                .reads("zigzag", "finger-nose:right", "heel-shin:right")
                .normal("finger-nose:left", "joint-position:right@sole", "index-finger-abduction:right")
                .normal("plantar-response:right", "palate-rise", "pin:left@c6-thumb");
    }

    @Test
    void quarrymanHasNumbFeetAndAPressureThatFallsWithoutAnAnsweringPulse() {
        Chart chart = Chart.of("quarryman")
                .reads("absent", "vibration:right@heel", "vibration:left@heel")
                .reads("1", "ankle-reflex:right", "ankle-reflex:left")
                .normal("knee-reflex:right", "pin:right@c6-thumb", "plantar-response:left", "pressure-lying@systolic")
                .reads(60, 100, "pressure-standing-3-minutes@systolic");
        double lying = ((Reading.Amount) chart.sign("pulse-rate").reading()).value();
        chart.reads(lying, lying + 15, "pressure-standing-3-minutes@pulse")
                .means("pressure-reflex-lost", "pressure-standing-3-minutes@systolic");
    }

    /** Early: so soon after a stroke the limbs are slack and nothing is brisk. Design values of the courses. */
    @Test
    void ropemakerIsWeakOnTheLeftWithoutABriskReflexAndHerPulseIsIrregular() {
        Chart.of("ropemaker")
                .reads("1", "knee-reflex:left", "triceps-reflex:left")
                .reads("extensor", "plantar-response:left")
                .reads("floppy", "tone-elbow:left")
                .reads("irregular", "pulse-rhythm")
                .abnormal("show-teeth:left", "finger-extension:left")
                .normal("brow-lift:left", "eye-closure:left", "pin:left@c6-thumb", "finger-extension:right");
    }

    @Test
    void proofreaderSeesLittleByADiscThatLooksWell() {
        Chart.of("proofreader")
                .reads("right-defect", "swinging-light")
                .abnormal("acuity:right", "red-brightness:right", "visual-field:right@centre-outer")
                .normal("disc-margin:right", "disc-colour:right", "acuity:left", "pupil-size-light:right");
    }

    /** Teitelbaum 2002, Can J Neurol Sci 29:337: drift shows a slight lesion that power misses. Seen. */
    @Test
    void cartographerSinksAndIsStrong() {
        Chart.of("cartographer")
                .reads("sinks-turning", "pronator-drift:right")
                .normal("elbow-extension:right", "shoulder-abduction:right", "finger-extension:right")
                .normal("plantar-response:right", "knee-reflex:right");
    }

    @Test
    void whatIsOldIsSaidToBeOld() {
        Chart.of("verger")
                .means("old-nothing-new", "ankle-reflex:right", "ankle-reflex:left")
                .normal("vibration:right@heel", "knee-reflex:right", "romberg", "gait");
        Chart.of("librarian")
                .means("old-nothing-new", "pupil-light-direct:left", "pupil-near:left")
                .normal("lid-height:left", "eye-movement:left@up");
    }

    /** Lung truth table (secondary): each lung state of the cases. */
    @Test
    void chestsTellSolidLungFromFluidAndFromAir() {
        Chart.of("stonemason")
                .reads("dull", "percussion-back:right@lower-back")
                .reads("bronchial", "breath-sounds-back:right@lower-back")
                .reads("increased", "vocal-resonance-back:right@lower-back")
                .reads(100, 120, "pulse-rate");
        Chart.of("seamstress")
                .reads("stony-dull", "percussion-back:left@lower-back")
                .reads("absent", "breath-sounds-back:left@lower-back", "tactile-fremitus-back:left@lower-back");
        Chart.of("rower")
                .reads("hyper-resonant", "percussion-front:left@upper-front")
                .reads("reduced", "breath-sounds-front:left@upper-front")
                .normal("trachea:right", "trachea:left");
        Chart.of("baker")
                .abnormal("neck-vein-height", "abdominojugular-test", "forced-breath-out")
                .reads("pursed", "pursed-lips")
                .reads("barrel", "chest-shape");
    }

    @Test
    void usherTiresAndKeepsReflexesPupilsAndFeeling() {
        Chart.of("usher")
                .abnormal("lid-fatigue:right", "bite:left", "shoulder-abduction:right", "eye-movement:left@outward")
                .normal("knee-reflex:right", "pupil-light-direct:left", "pin:right@c6-thumb", "plantar-response:left");
    }

    @Test
    void coachmanLosesTheOuterHalvesAndMostOfTheUpperQuarters() {
        Chart.of("coachman")
                .reads("not-seen", "visual-field:right@upper-outer", "visual-field:left@upper-outer")
                .reads("faint", "visual-field:right@lower-outer", "visual-field:left@lower-outer")
                .normal("visual-field:right@upper-inner", "acuity:right", "swinging-light");
    }

    @Test
    void floristHearsBoneBetterOnTheLeftByAHealthyDrum() {
        Chart.of("florist")
                .reads("to-left", "weber-test")
                .reads("bone", "rinne-test:left")
                .normal("ear-drum:left", "rinne-test:right");
    }

    /** McGee 1999: the pulse rises by 30 or more on standing after much blood is lost. Seen. */
    @Test
    void draymanHasAPulseThatRacesOnStandingAndTheQuarrymanHasNot() {
        Chart.of("drayman")
                .normal("pressure-lying@systolic")
                .reads(110, 150, "pressure-standing-1-minute@pulse")
                .means("volume-lost", "pressure-standing-1-minute@systolic");
        Chart.of("quarryman").reads(60, 90, "pressure-standing-1-minute@pulse");
    }

    @Test
    void gloverIsDullInOneFingerTipAndALittleWeakInOneMuscle() {
        Chart.of("glover")
                .reads("1", "pin:right@index-fingertip")
                .reads("4", "thumb-abduction:right")
                .normal("pin:right@c6-thumb", "pin:right@little-fingertip", "triceps-reflex:right");
    }

    /** Aortic stenosis: slow rise, soft second sound, late murmur to the neck (Etchells 1997, JAMA 277:564). */
    @Test
    void clockmakerHasASlowPulseAndALateMurmurThatReachesTheNeck() {
        Chart.of("clockmaker")
                .reads("slow-rising", "pulse-character")
                .reads("sustained", "apex-character")
                .reads("soft", "second-sound-loudness@aortic")
                .reads("late-peak", "murmur-shape")
                .reads("heard", "murmur-spread@neck")
                .normal("apex-place", "neck-vein-height", "pulse-rhythm");
    }

    /** Mitral leak and a worn ventricle: wide apex, third sound, murmur to the armpit (valve guideline 2006; McGee 4th ed.). */
    @Test
    void laundressHasAMurmurToTheArmpitAndAThirdSound() {
        Chart.of("laundress")
                .reads("outside", "apex-place")
                .reads("pansystolic", "murmur-timing@mitral")
                .reads("mitral", "murmur-loudest")
                .reads("heard", "murmur-spread@axilla")
                .reads("third", "filling-sounds@mitral")
                .reads("late-fine", "crackles-back:right@lower-back", "crackles-back:left@lower-back")
                .normal("neck-vein-height", "pulse-character");
    }

    /** An innocent murmur is short, soft, early, and softer on standing, with normal sounds and pulse (features, secondary). */
    @Test
    void ropedancerHasASoftEarlyMurmurAndNothingElse() {
        Chart.of("ropedancer")
                .reads("early-peak", "murmur-shape")
                .reads("softer", "murmur-on-standing", "murmur-on-straining")
                .normal(
                        "second-sound-loudness@aortic",
                        "pulse-character",
                        "apex-place",
                        "apex-character",
                        "first-sound")
                .normal("murmur-spread@neck", "filling-sounds@mitral", "neck-vein-height");
    }
}

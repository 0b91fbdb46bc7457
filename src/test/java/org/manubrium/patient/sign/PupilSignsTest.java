package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What published descriptions say of pupils, read off bodies that have nothing but lesions. */
class PupilSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(40);

    private static double atDark(Bedside patient, String eye) {
        return patient.amount("pupil-size-dark:" + eye);
    }

    private static double atLight(Bedside patient, String eye, String light) {
        return patient.amount("pupil-size-light:" + eye, Map.of("pupil-light", light));
    }

    private static double atLight(Bedside patient, String eye) {
        return atLight(patient, eye, "even");
    }

    @Nested
    class Health {
        /** PupilX normal values, 91 adults, Eur J Ophthalmol: 6.5 mm (SD 1.3) at 0 lux, 4.03 (SD 0.9) at 16 lux. */
        @Test
        @DisplayName("X39 sizes in the dark and at 16 lux are those measured")
        void sizesAreThoseMeasured() {
            assertThat(atDark(HEALTHY, "right")).isCloseTo(6.5, within(0.1));
            assertThat(atLight(HEALTHY, "right")).isCloseTo(4.0, within(0.1));
        }

        /** Winn 1994, Invest Ophthalmol Vis Sci 35:1132: 91 people of 17 to 83 years. */
        @Test
        @DisplayName("X44 size falls with age by 0.043 mm a year in dim light and 0.015 in bright")
        void sizeFallsWithAge() {
            for (String light : List.of("dim", "bright")) {
                double years = 83 - 17;
                double fall = atLight(Bedside.healthy(17), "left", light) - atLight(Bedside.healthy(83), "left", light);
                assertThat(fall / years).isCloseTo(light.equals("dim") ? 0.043 : 0.015, within(0.0005));
            }
        }

        /** Dynamic pupillometry in 470 healthy Indian adults 2024: latency 0.23 (SD 0.02) s, constriction 34.7 (4.2) %. */
        @Test
        void theReactionIsAsQuickAndAsLargeAsMeasured() {
            List<Double> curve = HEALTHY.curve("pupil-light-direct:right", "right");
            double before = curve.get(0);

            long unmoved = curve.stream().takeWhile(d -> d > before - 0.05).count();

            assertThat(unmoved * 0.05).isBetween(0.19, 0.35);
            assertThat((before - Collections.min(curve)) / before).isCloseTo(0.347, within(2 * 0.042));
        }

        @Test
        void noSwingOfTheTorchMakesAHealthyPupilStayWide() {
            assertThat(HEALTHY.word("swinging-light")).isEqualTo("no-defect");
            assertThat(HEALTHY.word("pupil-near:left")).isEqualTo("prompt");
        }
    }

    @Nested
    class OnTheWayIn {
        private static final Bedside RIGHT = HEALTHY.lesion("optic nerve right", 0.9, "6 weeks");

        /** NCBI Bookshelf chapter, Marcus Gunn Pupil; McGee 4th ed. ch. 21. */
        @Test
        @DisplayName("X29 a torch swung to the worse eye widens both pupils, swung back narrows both; near is normal")
        void bothPupilsWidenWhenTheTorchReachesTheWorseEye() {
            for (String pupil : List.of("right", "left")) {
                List<Double> curve = RIGHT.curve("swinging-light", pupil, Map.of("torch", "left-first"));
                double onLeft = curve.get(63);
                double onRight = curve.get(127);
                double onLeftAgain = curve.get(190);
                assertThat(onRight - onLeft).isGreaterThan(0.3);
                assertThat(onRight - onLeftAgain).isGreaterThan(0.3);
            }
            assertThat(RIGHT.word("swinging-light")).isEqualTo("right-defect");
            assertThat(RIGHT.word("pupil-near:right")).isEqualTo("prompt");
            assertThat(RIGHT.meaning("swinging-light")).isEqualTo("light-in-eye");
        }

        /** McGee, Evidence-Based Physical Diagnosis, 4th ed., ch. 21. */
        @ParameterizedTest
        @ValueSource(doubles = {0, 0.2, 0.5, 0.8, 0.99, 1})
        @DisplayName("X30 an afferent defect of any depth never makes the pupils unequal")
        void anAfferentDefectNeverMakesPupilsUnequal(double loss) {
            for (String where : List.of("optic nerve right", "retina left", "optic tract right", "optic chiasm")) {
                Bedside patient = HEALTHY.lesion(where, loss, "6 weeks");
                for (String light : List.of("even", "dim", "bright")) {
                    assertThat(atLight(patient, "right", light))
                            .isCloseTo(atLight(patient, "left", light), within(0.1));
                }
                assertThat(atDark(patient, "right")).isCloseTo(atDark(patient, "left"), within(0.1));
                List<Double> right = patient.curve("swinging-light", "right");
                List<Double> left = patient.curve("swinging-light", "left");
                for (int i = 0; i < right.size(); i++) {
                    assertThat(right.get(i)).isCloseTo(left.get(i), within(0.1));
                }
            }
        }

        /** University neuro-ophthalmology chapter on afferent defects (amaurotic pupil); McGee ch. 21. */
        @Test
        void aBlindEyeAnswersOnlyTheOther() {
            Bedside blind = HEALTHY.lesion("optic nerve right", 1, "1 year");

            assertThat(blind.word("pupil-light-direct:right")).isEqualTo("absent");
            assertThat(blind.word("pupil-light-consensual:left")).isEqualTo("absent");
            assertThat(blind.word("pupil-light-direct:left")).isEqualTo("brisk");
            assertThat(blind.word("pupil-light-consensual:right")).isEqualTo("brisk");
        }

        /** Kardon 2006, Ophthalmology: 54-67 % of pupil fibres cross, so the eye opposite the tract drives less. */
        @Test
        void anOpticTractGivesADefectInTheOppositeEye() {
            Bedside tract = HEALTHY.lesion("optic tract right", 1, "6 weeks");

            assertThat(tract.word("swinging-light")).isEqualTo("left-defect");
            assertThat(tract.meaning("swinging-light")).isEqualTo("light-in-tract");
        }

        /** Lam & Thompson 1990, Ophthalmology 97:334; the small defect of the other eye is not modelled. */
        @Test
        @DisplayName("X43 a dense cataract gives no afferent defect in its eye")
        void aCataractGivesNoDefectInItsEye() {
            Bedside cataract = HEALTHY.lesion("lens right", 1, "1 year");

            assertThat(cataract.word("swinging-light")).isNotEqualTo("right-defect");
            assertThat(cataract.word("pupil-light-direct:right")).isEqualTo("brisk");
        }
    }

    @Nested
    class Sympathetic {
        private static final List<String> PATH = List.of(
                "hypothalamus right",
                "lateral medulla right",
                "cord sympathetic tract C6 right",
                "root T1 right",
                "sympathetic chain right at lung apex",
                "sympathetic chain right at neck",
                "carotid plexus right");

        /** Wills Eye Manual 8th ed.; Martin 2018; photographic dilation lag in 56 Horner and 39 normal people. */
        @Test
        @DisplayName("X31 Horner: unequal most in the dark, most at five seconds, lid 1-2 mm down, both pupils react")
        void hornerShowsItselfInTheDark() {
            for (String where : PATH) {
                Bedside horner = HEALTHY.lesion(where, 1, "6 weeks");
                double light = atLight(horner, "left") - atLight(horner, "right");
                double dark = atDark(horner, "left") - atDark(horner, "right");
                double lid = horner.amount("lid-height:left") - horner.amount("lid-height:right");

                assertThat(light).as(where).isPositive();
                assertThat(dark).as(where).isGreaterThan(light + 0.3);
                assertThat(horner.amount("pupil-dark-lag")).as(where).isCloseTo(0.3, within(0.1));
                assertThat(lid).as(where).isBetween(1.0, 2.0);
                assertThat(horner.word("swinging-light")).isEqualTo("no-defect");
                for (String eye : List.of("right", "left")) {
                    assertThat(horner.word("pupil-light-direct:" + eye)).isEqualTo("brisk");
                    assertThat(horner.word("pupil-light-consensual:" + eye)).isEqualTo("brisk");
                }
            }
        }

        @Test
        void theStretchOfThePathIsTold() {
            assertThat(HEALTHY.lesion("lateral medulla right", 1, "6 weeks").meaning("pupil-size-dark:right"))
                    .isEqualTo("pupil-sympathetic-first");
            assertThat(HEALTHY.lesion("sympathetic chain right at neck", 1, "6 weeks")
                            .meaning("lid-height:right"))
                    .isEqualTo("lid-sympathetic");
        }
    }

    @Nested
    class OnTheWayOut {
        private static final Bedside THIRD = HEALTHY.lesion("third nerve right", 1, "3 days");

        /** Practical Neurology, table of pupillary abnormalities. */
        @Test
        @DisplayName(
                "X36 third nerve: larger, most so in light, fixed to both torches, lid down, light still carried in")
        void theThirdNerveLeavesALargeFixedPupil() {
            double light = atLight(THIRD, "right") - atLight(THIRD, "left");
            double dark = atDark(THIRD, "right") - atDark(THIRD, "left");

            assertThat(light).isGreaterThan(dark).isGreaterThan(2);
            assertThat(THIRD.word("pupil-light-direct:right")).isEqualTo("absent");
            assertThat(THIRD.word("pupil-light-consensual:right")).isEqualTo("absent");
            assertThat(THIRD.word("pupil-light-consensual:left")).isEqualTo("brisk");
            assertThat(THIRD.word("swinging-light")).isEqualTo("no-defect");
            assertThat(THIRD.amount("lid-height:right")).isLessThan(2);
            assertThat(THIRD.meaning("pupil-size-light:right")).isEqualTo("pupil-third-nerve");
        }

        /** Trobe 1985, Ophthalmology 92:58, pupil-sparing third nerve palsy (abstract). */
        @Test
        void theMotorFibresAloneSpareThePupil() {
            Bedside sparing = HEALTHY.lesion("third nerve right at motor fibres", 1, "3 days");

            assertThat(sparing.amount("lid-height:right")).isLessThan(2);
            assertThat(sparing.sign("pupil-size-light:right").normal()).contains(true);
            assertThat(sparing.word("pupil-light-direct:right")).isEqualTo("brisk");
        }

        /** McGee 4th ed. ch. 21; hospital eye manual on pupils. */
        @Test
        @DisplayName("X32 worse in light: the larger pupil is ill; worse in the dark: the smaller; equal: born so")
        void theLightTellsWhichPupilIsIll() {
            Bedside horner = HEALTHY.lesion("carotid plexus left", 1, "6 weeks");

            assertThat(THIRD.sign("pupil-size-light:right").normal()).contains(false);
            assertThat(THIRD.sign("pupil-size-light:left").normal()).contains(true);
            assertThat(horner.sign("pupil-size-dark:left").normal()).contains(false);
            assertThat(horner.sign("pupil-size-dark:right").normal()).contains(true);
        }

        /** Trobe, Tonic pupil; Practical Neurology. The test with drops is not modelled. */
        @Test
        @DisplayName("X33 tonic pupil: hardly to light, strongly and slowly to near, slow to widen again")
        void aTonicPupilAnswersNearAndNotLight() {
            Bedside adie = HEALTHY.lesion("ciliary ganglion right", 1, "8 weeks");
            double toLight = narrowed(adie.curve("pupil-light-direct:right", "right"));
            double healthyToLight = narrowed(HEALTHY.curve("pupil-light-direct:right", "right"));
            List<Double> near = adie.curve("pupil-near:right", "right");
            List<Double> fellow = adie.curve("pupil-near:right", "left");

            assertThat(toLight).isLessThan(0.2 * healthyToLight);
            assertThat(narrowed(near)).isGreaterThan(2 * toLight);
            assertThat(adie.word("pupil-near:right")).isEqualTo("slow");
            assertThat(adie.word("pupil-near:left")).isEqualTo("prompt");
            assertThat(regained(near)).isLessThan(0.6 * regained(fellow));
            assertThat(atLight(adie, "right")).isGreaterThan(atLight(adie, "left") + 1);
            assertThat(adie.meaning("pupil-light-direct:right")).isEqualTo("pupil-ciliary");
        }

        /** Tonic pupil review. */
        @Test
        @DisplayName("X34 an old tonic pupil is the smaller in the dark and still answers near better than light")
        void anOldTonicPupilIsSmall() {
            Bedside old = HEALTHY.lesion("ciliary ganglion right", 1, "10 years");

            assertThat(atDark(old, "right")).isLessThan(atDark(old, "left") - 2);
            assertThat(old.word("pupil-near:right")).isEqualTo("slow");
            assertThat(old.word("pupil-light-direct:right")).isNotEqualTo("brisk");
        }

        /** Thompson & Kardon 2006, J Neuro-Ophthalmol 26:134; Trobe. The outline is not modelled. */
        @Test
        @DisplayName("X35 Argyll Robertson: small in the dark, no answer to light, prompt to near, prompt to widen")
        void lightLostAndInhibitionLostMakeSmallPupilsThatAnswerNear() {
            Bedside patient =
                    HEALTHY.lesion("pretectum both", 1, "years").lesion("pupil inhibitory fibres both", 1, "years");

            for (String eye : List.of("right", "left")) {
                List<Double> near = patient.curve("pupil-near:" + eye, eye);
                assertThat(atDark(patient, eye)).isLessThanOrEqualTo(2.5);
                assertThat(patient.word("pupil-light-direct:" + eye)).isEqualTo("absent");
                assertThat(patient.word("pupil-near:" + eye)).isEqualTo("prompt");
                assertThat(regained(near)).isGreaterThan(0.9);
            }
        }

        /** Larner, Dictionary of Neurological Signs, Parinaud syndrome. */
        @Test
        void theBackOfTheMidbrainKeepsNearAndLosesLight() {
            Bedside patient = HEALTHY.lesion("dorsal midbrain", 1, "6 weeks");

            assertThat(patient.word("pupil-light-direct:right")).isEqualTo("absent");
            assertThat(patient.word("pupil-near:right")).isEqualTo("prompt");
            assertThat(patient.word("swinging-light")).isEqualTo("unusable");
            assertThat(atLight(patient, "right")).isGreaterThan(5);
        }

        /** Practical Neurology, table of pupillary abnormalities. */
        @Test
        void anIrisThatCannotNarrowAnswersNeitherLightNorNear() {
            Bedside patient = HEALTHY.lesion("iris sphincter left", 1, "hours");

            assertThat(patient.word("pupil-light-direct:left")).isEqualTo("absent");
            assertThat(patient.word("pupil-near:left")).isEqualTo("absent");
            assertThat(patient.sign("lid-height:left").normal()).contains(true);
            assertThat(patient.meaning("pupil-near:left")).isEqualTo("pupil-iris");
        }

        private static double narrowed(List<Double> curve) {
            return curve.get(0) - Collections.min(curve);
        }

        /** The share of the narrowing regained at the end. */
        private static double regained(List<Double> curve) {
            double least = Collections.min(curve);
            return (curve.get(curve.size() - 1) - least) / (curve.get(0) - least);
        }
    }
}

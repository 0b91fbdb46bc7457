package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Finding;

/** What the texts say of sight, fields and the back of the eye, read off bodies that have nothing but lesions. */
class SightSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(50);

    @Nested
    class Fields {
        private static final List<String> POINTS = List.of(
                "upper-outer",
                "lower-outer",
                "upper-inner",
                "lower-inner",
                "centre-outer",
                "centre-inner",
                "far-outer");

        /** The points of one eye that are not fully seen. */
        private static String missing(Bedside patient, String eye) {
            return POINTS.stream()
                    .filter(point ->
                            !patient.word("visual-field:" + eye + "@" + point).equals("seen"))
                    .collect(Collectors.joining(" "));
        }

        /** AJNR 2007 28:3 Table 1; Larner, Visual field defects; Gray 1997; skull-base textbook. */
        @ParameterizedTest(name = "{0}")
        @CsvSource(delimiter = '|', emptyValue = "", textBlock = """
                optic nerve right           | upper-outer lower-outer upper-inner lower-inner centre-outer centre-inner far-outer | ''
                optic nerve right at macular fibres | centre-outer centre-inner | ''
                retina right at macula      | centre-outer centre-inner | ''
                optic chiasm                | upper-outer lower-outer centre-outer far-outer | upper-outer lower-outer centre-outer far-outer
                optic chiasm at lower fibres | upper-outer far-outer | upper-outer far-outer
                optic chiasm at upper fibres | lower-outer far-outer | lower-outer far-outer
                optic tract right           | upper-inner lower-inner centre-inner | upper-outer lower-outer centre-outer far-outer
                lateral geniculate body right | upper-inner lower-inner centre-inner | upper-outer lower-outer centre-outer far-outer
                temporal lobe right         | upper-inner | upper-outer far-outer
                optic radiation right       | upper-inner lower-inner centre-inner | upper-outer lower-outer centre-outer far-outer
                occipital lobe right        | upper-inner lower-inner | upper-outer lower-outer far-outer
                visual cortex right at pole | centre-inner | centre-outer
                visual cortex right at lower bank | upper-inner | upper-outer
                visual cortex right at upper bank | lower-inner | lower-outer
                visual cortex right at anterior | '' | far-outer
                """)
        void theFieldLostTellsTheSite(String where, String right, String left) {
            Bedside patient = HEALTHY.lesion(where, 1, "6 weeks");

            assertThat(missing(patient, "right")).isEqualTo(right);
            assertThat(missing(patient, "left")).isEqualTo(left);
        }

        /** AJNR 2007 28:3 Table 1: parietal lobe, the opposite half, denser below. */
        @Test
        void theParietalLobeLosesMoreBelow() {
            Bedside patient = HEALTHY.lesion("parietal lobe right", 1, "6 weeks");

            assertThat(patient.word("visual-field:left@lower-outer")).isEqualTo("not-seen");
            assertThat(patient.word("visual-field:left@upper-outer")).isEqualTo("faint");
            assertThat(patient.word("visual-field:left@centre-outer")).isEqualTo("seen");
            assertThat(patient.meaning("visual-field:right@lower-inner")).isEqualTo("sight-radiation");
        }

        /** Larner, Altitudinal field defect. */
        @Test
        void aStarvedDiscLosesTheLowerHalfOfOneEye() {
            Bedside patient = HEALTHY.condition("disc-infarct", Side.RIGHT);

            assertThat(missing(patient, "right"))
                    .contains("lower-outer", "lower-inner")
                    .doesNotContain("upper");
            assertThat(missing(patient, "left")).isEmpty();
        }

        /** Kerr 2010, Neurology 74:1184: a red target finds more than fingers. */
        @Test
        void aFingerIsSeenWhereRedIsNot() {
            Bedside patient = HEALTHY.lesion("optic chiasm", 0.6, "6 months");
            String item = "visual-field:right@upper-outer";

            assertThat(patient.show(item, Map.of("field-target", "finger")))
                    .isEqualTo(HEALTHY.show(item, Map.of("field-target", "finger")));
            assertThat(patient.show(item, Map.of("field-target", "red")))
                    .isNotEqualTo(HEALTHY.show(item, Map.of("field-target", "red")));
        }

        /** Table of field defects and pupils: no defect behind the tract; in the eye opposite to a tract. */
        @Test
        void theSwingTellsTractFromRadiation() {
            assertThat(HEALTHY.lesion("optic tract right", 1, "6 weeks").word("swinging-light"))
                    .isEqualTo("left-defect");
            for (String where :
                    List.of("lateral geniculate body right", "optic radiation right", "occipital lobe right")) {
                assertThat(HEALTHY.lesion(where, 1, "6 weeks").word("swinging-light"))
                        .isEqualTo("no-defect");
            }
        }
    }

    @Nested
    class Acuity {
        @Test
        void aHalfFieldLostBehindTheChiasmLeavesAcuity() {
            for (String where : List.of("optic tract right", "optic radiation left", "optic chiasm")) {
                assertThat(HEALTHY.lesion(where, 1, "6 weeks").word("acuity:right"))
                        .isEqualTo("6/6");
            }
        }

        /** Larner; Optic Neuritis Treatment Trial (Katz 1995): colour early; Marcus Gunn chapter: a defect, pupils equal. */
        @Test
        void opticNeuritisTakesCentreColourAndLightInAndLeavesTheDisc() {
            Bedside patient = HEALTHY.condition("optic-neuritis", Side.LEFT);

            assertThat(patient.word("acuity:left")).isIn("6/60", "3/60", "6/36");
            assertThat(patient.word("acuity:right")).isEqualTo("6/6");
            assertThat(patient.amount("red-brightness:left")).isLessThan(50);
            assertThat(patient.word("visual-field:left@centre-inner")).isEqualTo("not-seen");
            assertThat(patient.word("visual-field:left@upper-inner")).isEqualTo("faint");
            assertThat(patient.word("swinging-light")).isEqualTo("left-defect");
            assertThat(patient.word("disc-margin:left")).isEqualTo("sharp");
            assertThat(patient.word("disc-colour:left")).isEqualTo("pink");
            assertThat(patient.meaning("acuity:left")).isEqualTo("sight-nerve");
        }

        @Test
        void aDiscPalesInWeeks() {
            assertThat(HEALTHY.lesion("optic nerve right", 0.8, "3 days").word("disc-colour:right"))
                    .isEqualTo("pink");
            assertThat(HEALTHY.lesion("optic nerve right", 0.8, "3 months").word("disc-colour:right"))
                    .isEqualTo("pale");
            assertThat(HEALTHY.condition("old-optic-neuritis", Side.RIGHT).meaning("disc-colour:right"))
                    .isEqualTo("disc-fibres-lost");
        }

        /** MSD Manual, Evaluation of the ophthalmologic patient: usually to about 6/9; no gain points to retina or nerve. */
        @Test
        void aPinholeMendsBlurAndNothingBehindIt() {
            Bedside shortSight = HEALTHY.condition("short-sight", Side.NONE);
            Bedside nerve = HEALTHY.lesion("optic nerve right", 0.8, "6 weeks");

            assertThat(reading(shortSight, "none")).isEqualTo("6/24");
            assertThat(reading(shortSight, "pinhole")).isEqualTo("6/9");
            assertThat(reading(nerve, "pinhole")).isEqualTo(reading(nerve, "none"));
        }

        private static String reading(Bedside patient, String pinhole) {
            var reading =
                    patient.sign("acuity:right", Map.of("pinhole", pinhole)).reading();
            return ((org.manubrium.examination.Reading.Grade) reading).grade();
        }

        /** Arithmetic (logMAR is the negative logarithm of the Snellen fraction); acuity conversion table. */
        @Test
        void bothChartsTellTheSame() {
            for (double loss = 0; loss <= 0.85; loss += 0.05) {
                Bedside patient = HEALTHY.lesion("lens left", loss, "1 year");
                if (patient.sign("acuity-logmar:left").finding() instanceof Finding.Measured letters
                        && patient.sign("acuity:left").finding() instanceof Finding.Graded lines) {
                    assertThat(letters.value()).isCloseTo(-lines.amount(), within(0.011));
                }
            }
        }

        /** A letter of the chart counts 0.02 logMAR (common practice), so that no reading has more than two places. */
        @Test
        void aReadingInLettersHasTwoPlacesAtMost() {
            int compared = 0;
            for (int hundredths = 0; hundredths < 100; hundredths += 2) {
                Bedside patient = HEALTHY.lesion("optic nerve right", hundredths / 100.0, "1 year");
                if (patient.sign("acuity-logmar:right").finding() instanceof Finding.Measured letters) {
                    assertThat(new BigDecimal(String.valueOf(letters.value())).scale())
                            .isLessThanOrEqualTo(2);
                    compared++;
                }
            }
            assertThat(compared).isGreaterThan(20);
        }

        @Test
        void aBlindEyeSeesNoLight() {
            assertThat(HEALTHY.lesion("optic nerve right", 1, "1 year").word("acuity:right"))
                    .isEqualTo("NPL");
            assertThat(HEALTHY.lesion("optic nerve right", 1, "1 year").word("acuity-logmar:right"))
                    .isEqualTo("below-chart");
        }

        /** Lam & Thompson 1990; the field of a cloudy lens is full. */
        @Test
        @DisplayName("X43 a dense cataract dims sight and glow and gives no defect in its own eye")
        void aCataractGivesNoAfferentDefect() {
            Bedside patient = HEALTHY.lesion("lens right", 0.9, "3 years");

            assertThat(patient.word("swinging-light")).isEqualTo("no-defect");
            assertThat(patient.word("red-reflex:right")).isEqualTo("dark");
            assertThat(patient.word("acuity:right")).isIn("6/60", "3/60");
            assertThat(patient.word("disc-margin:right")).isEqualTo("no-view");
            assertThat(patient.meaning("acuity:right")).isEqualTo("sight-media");
        }
    }

    @Nested
    class BackOfTheEye {
        @ParameterizedTest(name = "{0}: {1}")
        @CsvSource({
            "raised-skull-pressure, disc-margin, blurred, disc-pressure",
            "disc-infarct, disc-margin, blurred, disc-swollen",
            "retinal-artery-occlusion, macula, red-spot, macula-starved",
            "retinal-artery-occlusion, retinal-vessels, threads, vessels-empty",
            "retinal-vein-occlusion, retinal-vessels, engorged, vessels-full",
            "retinal-vein-occlusion, retinal-haemorrhages, flames, shallow-blood",
            "macular-degeneration, macula, spots, macula-aged",
            "wet-macular-degeneration, macula, bleed, macula-torn",
            "diabetic-retinopathy, retinal-haemorrhages, dots, deep-blood",
            "diabetic-retinopathy, retinal-white-patches, hard, retina-leak",
            "proliferative-retinopathy, retinal-vessels, new-vessels, vessels-grown",
            "hypertensive-retinopathy, retinal-vessels, nipped, vessels-narrow",
            "malignant-retinopathy, retinal-white-patches, cotton, fibres-starved",
            "malignant-retinopathy, disc-margin, blurred, disc-swollen",
            "vitreous-blood, red-reflex, dark, sight-media",
            "cataract, red-reflex, dim, sight-media"
        })
        void whatAilsTheRetinaIsSeenAndExplained(String condition, String manoeuvre, String seen, String means) {
            Side side = Bedside.REFERENCE
                            .conditions()
                            .condition(condition)
                            .orElseThrow()
                            .sided()
                    ? Side.RIGHT
                    : Side.NONE;
            Bedside patient = HEALTHY.condition(condition, side);

            assertThat(patient.word(manoeuvre + ":right")).isEqualTo(seen);
            assertThat(patient.meaning(manoeuvre + ":right")).isEqualTo(means);
        }

        /** JAMA 2013 309:2035; NHANES 2005-2008: a difference of 0.2 is suspicious. */
        @Test
        void glaucomaHollowsTheDiscAndTakesTheInnerFieldFirst() {
            Bedside patient = HEALTHY.condition("glaucoma", Side.LEFT);

            assertThat(patient.amount("cup-ratio:left")).isGreaterThan(0.7);
            assertThat(patient.sign("cup-ratio:right").normal()).contains(true);
            assertThat(patient.meaning("cup-ratio:left")).isEqualTo("disc-hollowed");
            assertThat(patient.word("visual-field:left@upper-inner")).isEqualTo("not-seen");
            assertThat(patient.word("acuity:left")).isEqualTo("6/6");
        }

        @Test
        void nothingOfTheDiscShowsThroughADenseCataract() {
            Bedside cloudy = HEALTHY.lesion("lens right", 0.9, "3 years");
            Bedside swollen = cloudy.shift("eye.right.swelling", 4).shift("eye.right.cup", 0.4);

            Stream.of("disc-margin:right", "cup-ratio:right")
                    .forEach(item -> assertThat(swollen.show(item, Map.of())).isEqualTo(cloudy.show(item, Map.of())));
        }
    }
}

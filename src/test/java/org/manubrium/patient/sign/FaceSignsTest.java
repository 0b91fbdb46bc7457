package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Variation;

/** What the texts say of face, jaw, palate, tongue and neck, read off bodies that have nothing but lesions. */
class FaceSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(50);

    private static void reads(Bedside patient, String... expected) {
        Stream.of(expected).forEach(pair -> {
            String[] parts = pair.split("=", -1);
            assertThat(patient.word(parts[0])).as(parts[0]).isEqualTo(parts[1]);
        });
    }

    @Nested
    class Movement {
        /** Neurology atlas text, facial nerve disorders: the forehead is spared above the nucleus, weak below it. */
        @Test
        void aCapsularStrokeTakesTheLowerFaceOfTheOtherSideAndSparesTheForehead() {
            Bedside stroke = HEALTHY.condition("capsular-stroke", Side.LEFT);

            reads(
                    stroke,
                    "brow-lift:right=full",
                    "eye-closure:right=full",
                    "show-teeth:right=weak",
                    "show-teeth:left=full",
                    "tongue-out=to-right",
                    "palate-rise=straight",
                    "bite:right=full",
                    "jaw-jerk=slight");
            assertThat(stroke.meaning("show-teeth:right")).isEqualTo("teeth-upper");
            assertThat(stroke.meaning("tongue-out")).isEqualTo("tongue-upper");
        }

        @Test
        void theFacialNerveTakesBothHalvesOfTheFace() {
            Bedside palsy = HEALTHY.condition("facial-palsy", Side.RIGHT);

            reads(
                    palsy,
                    "brow-lift:right=none",
                    "eye-closure:right=none",
                    "show-teeth:right=none",
                    "puff-cheeks:right=none",
                    "brow-lift:left=full",
                    "show-teeth:left=full");
            assertThat(palsy.meaning("brow-lift:right")).isEqualTo("brow-nerve");
            assertThat(palsy.meaning("show-teeth:right")).isEqualTo("teeth-nerve");
        }

        /** Campbell, Pocket Guide, ch. 11: the jaw goes to the weak side. DeJong 7th ed.: the palate goes away from it. */
        @ParameterizedTest
        @CsvSource({
            "trigeminal nerve right at root, jaw-opening, to-right",
            "vagus nerve right at skull base, palate-rise, to-left",
            "nucleus ambiguus left, palate-rise, to-right",
            "hypoglossal nerve right, tongue-out, to-right",
            "hypoglossal nucleus left, tongue-out, to-left"
        })
        void whatLeavesTheMidlineGoesTheWayTheTextsSay(String where, String manoeuvre, String way) {
            assertThat(HEALTHY.lesion(where, 0.9, "6 weeks").word(manoeuvre)).isEqualTo(way);
        }

        /** University cranial nerve notes: wasting and fasciculation below the nucleus, none above it. */
        @Test
        void aTongueWastesOnlyBelowItsNucleusAndInTime() {
            assertThat(HEALTHY.lesion("hypoglossal nerve right", 0.9, "3 days").word("tongue-at-rest:right"))
                    .isEqualTo("full");
            assertThat(HEALTHY.lesion("hypoglossal nerve right", 0.9, "4 weeks").word("tongue-at-rest:right"))
                    .isEqualTo("quivering");
            assertThat(HEALTHY.lesion("hypoglossal nerve right", 0.9, "3 months")
                            .word("tongue-at-rest:right"))
                    .isEqualTo("wasted");
            assertThat(HEALTHY.lesion("internal capsule left", 1, "1 year").word("tongue-at-rest:right"))
                    .isEqualTo("full");
        }

        /** Campbell, Pocket Guide: the right sternomastoid turns the head left; a hemisphere turns it to the other side. */
        @Test
        void theAccessoryNerveWeakensTheShrugOfItsSideAndTheTurnToTheOther() {
            Bedside nerve = HEALTHY.lesion("accessory nerve right at skull base", 1, "6 weeks");
            reads(
                    nerve,
                    "shoulder-shrug:right=none",
                    "shoulder-shrug:left=full",
                    "head-turning:left=none",
                    "head-turning:right=full");

            Bedside hemisphere = HEALTHY.lesion("internal capsule left", 1, "6 weeks");
            reads(hemisphere, "shoulder-shrug:right=weak", "head-turning:right=weak", "head-turning:left=full");
        }

        @Test
        void lossOfBothHemispheresStillsThePalateAndLossOfOneDoesNot() {
            reads(HEALTHY.condition("pseudobulbar-palsy", Side.NONE), "palate-rise=no-movement", "bite:right=weak");
            reads(HEALTHY.lesion("internal capsule right", 1, "6 weeks"), "palate-rise=straight");
        }
    }

    @Nested
    class Reflexes {
        /** Blumenfeld, jaw jerk reflex; text on the jaw jerk. */
        @Test
        @DisplayName("X10 brisk with both sides lost above the middle of the pons, not below it")
        void theJawJerkTellsAboveFromBelowThePons() {
            reads(HEALTHY.lesion("internal capsule both", 0.9, "3 months"), "jaw-jerk=brisk", "knee-reflex:right=4");
            reads(HEALTHY.lesion("spinal cord C3", 0.6, "3 months"), "jaw-jerk=slight", "biceps-reflex:right=4");
            reads(HEALTHY.lesion("pons base both", 1, "3 months"), "jaw-jerk=slight");
            assertThat(HEALTHY.lesion("internal capsule both", 0.9, "3 months").meaning("jaw-jerk"))
                    .isEqualTo("jaw-jerk-released");
        }

        @Test
        @DisplayName("X17 a lesion of the cord at C5 and C6 leaves the jaw jerk as it was")
        void theCordLeavesTheJawJerkAlone() {
            reads(HEALTHY.lesion("spinal cord C5-C6", 1, "3 months"), "jaw-jerk=slight");
        }

        /** Human anatomy textbook, fig. 47-6; the arcs are common teaching. */
        @Test
        void theCornealReflexTellsTheWayInFromTheWayOut() {
            reads(
                    HEALTHY.lesion("trigeminal nerve right at ophthalmic", 1, "3 weeks"),
                    "corneal-reflex:right=neither",
                    "corneal-reflex:left=both");
            reads(
                    HEALTHY.lesion("facial nerve right", 1, "3 weeks"),
                    "corneal-reflex:right=other-only",
                    "corneal-reflex:left=this-only");
        }

        @Test
        void theGagTellsTheNinthNerveFromTheTenth() {
            reads(
                    HEALTHY.condition("glossopharyngeal-palsy", Side.RIGHT),
                    "gag-reflex:right=absent",
                    "gag-reflex:left=present",
                    "palate-rise=straight");
            reads(HEALTHY.condition("vagus-palsy", Side.RIGHT), "gag-reflex:right=weak", "gag-reflex:left=weak");
        }
    }

    @Nested
    class Feeling {
        private static final List<String> POINTS = List.of("forehead", "cheek", "chin", "mouth", "temple");

        /** Human anatomy textbook, fig. 47-6: three divisions; the angle of the jaw is C2 and C3. */
        @ParameterizedTest
        @CsvSource({"ophthalmic, forehead", "maxillary, cheek", "mandibular, chin"})
        void eachDivisionHasItsOwnSkin(String division, String point) {
            Bedside patient = HEALTHY.lesion("trigeminal nerve left at " + division, 1, "6 weeks");

            for (String other : List.of("forehead", "cheek", "chin", "jaw-angle")) {
                assertThat(patient.word("face-pin:left@" + other)).isEqualTo(other.equals(point) ? "0" : "2");
            }
        }

        @Test
        void theAngleOfTheJawIsKeptInTheFifthNerveAndLostInTheNeck() {
            Bedside nerve = HEALTHY.lesion("trigeminal nerve right", 1, "6 weeks");
            POINTS.forEach(
                    point -> assertThat(nerve.word("face-touch:right@" + point)).isEqualTo("0"));
            reads(nerve, "face-pin:right@jaw-angle=2", "face-touch:right@jaw-angle=2");
            assertThat(HEALTHY.lesion("root C2-C3 right", 1, "6 weeks").word("face-pin:right@jaw-angle"))
                    .isEqualTo("0");
        }

        /** Human anatomy textbook, fig. 47-6: a low lesion of the spinal nucleus takes the outer face, not the mouth. */
        @Test
        void aLowLesionOfTheSpinalNucleusSparesTheMouth() {
            Bedside low = HEALTHY.lesion("spinal trigeminal nucleus right at lower", 1, "6 weeks");

            reads(low, "face-pin:right@temple=0", "face-pin:right@mouth=2", "face-touch:right@temple=2");
        }
    }

    @Nested
    class Brainstem {
        /** Lateral medullary syndrome table; clinical neurology textbook, nuclear lesions of IX and X. */
        @Test
        @DisplayName("X22 right lateral medulla: right face and left body, right Horner, uvula to the left, power kept")
        void theLateralMedulla() {
            Bedside patient = HEALTHY.condition("lateral-medullary-infarct", Side.RIGHT);

            reads(
                    patient,
                    "face-pin:right@cheek=0",
                    "face-pin:left@cheek=2",
                    "face-touch:right@cheek=2",
                    "pin:left@c6-thumb=0",
                    "pin:right@c6-thumb=2",
                    "palate-rise=to-left",
                    "elbow-extension:left=5",
                    "hip-flexion:left=5",
                    "hip-flexion:right=5",
                    "tongue-out=straight",
                    "show-teeth:right=full");
            assertThat(patient.amount("pupil-size-dark:left") - patient.amount("pupil-size-dark:right"))
                    .isGreaterThan(0.5);
            assertThat(patient.meaning("palate-rise")).isEqualTo("palate-nucleus");
            assertThat(patient.meaning("face-pin:right@cheek")).isEqualTo("face-feeling-stem");
        }

        /** Medial medullary syndrome (stroke reference site): opposite arm and leg, tongue of the same side, face spared. */
        @Test
        void theMedialMedulla() {
            Bedside patient = HEALTHY.condition("medial-medullary-infarct", Side.RIGHT);

            reads(
                    patient,
                    "tongue-out=to-right",
                    "hip-flexion:right=5",
                    "show-teeth:left=full",
                    "face-pin:right@cheek=2",
                    "pin:left@c6-thumb=2");
            assertThat(Integer.parseInt(patient.word("hip-flexion:left"))).isLessThan(5);
        }

        /** Radiology reference case, anterior inferior cerebellar artery infarct. */
        @Test
        void theLateralPons() {
            Bedside patient = HEALTHY.condition("lateral-pontine-infarct", Side.RIGHT);

            reads(
                    patient,
                    "brow-lift:right=none",
                    "show-teeth:right=none",
                    "face-pin:right@cheek=0",
                    "face-touch:right@cheek=1",
                    "pin:left@c6-thumb=0",
                    "whispered-voice:right=missed",
                    "hip-flexion:left=5");
        }

        /** The same case text: in the upper pons face and body are both lost on the other side. */
        @Test
        void theUpperPonsTakesFaceAndBodyOfTheOtherSide() {
            reads(
                    HEALTHY.condition("upper-pontine-infarct", Side.RIGHT),
                    "face-pin:left@cheek=0",
                    "face-pin:right@cheek=2",
                    "pin:left@c6-thumb=0");
        }

        @Test
        void theThalamusTakesFaceAndBodyOfTheOtherSide() {
            reads(
                    HEALTHY.lesion("thalamus right", 1, "6 weeks"),
                    "face-pin:left@chin=0",
                    "face-touch:left@chin=0",
                    "face-pin:right@chin=2",
                    "show-teeth:left=full");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "oral-thrush, mouth-lining, wipes-off, mouth-fungus",
        "leucoplakia, mouth-lining, fixed-patch, mouth-white-patch",
        "mouth-sore, mouth-lining, sore, mouth-ulcer",
        "dry-mouth, mouth-lining, dry, mouth-dryness",
        "smooth-tongue, tongue-surface, smooth, tongue-papillae",
        "dental-decay, teeth-and-gums, decayed, teeth-rotten",
        "gum-disease, teeth-and-gums, gums, gums-inflamed",
        "smell-loss-injury, smell:right, absent, smell-nerve",
        "blocked-nose, smell:left, reduced, smell-nose"
    })
    void whatAilsMouthAndNoseIsSeenAndExplained(String condition, String item, String seen, String means) {
        Bedside patient = HEALTHY.condition(condition, Side.NONE);

        assertThat(patient.word(item)).isEqualTo(seen);
        assertThat(patient.meaning(item)).isEqualTo(means);
    }

    @Test
    void someHealthyPeopleHaveNoGagAndItIsNotCounted() {
        long without = 0;
        for (int seed = 1; seed <= 300; seed++) {
            var gag = Bedside.person(40, Variation.of(seed)).sign("gag-reflex:right");
            assertThat(gag.normal()).contains(true);
            without += gag.reading().toString().contains("absent") ? 1 : 0;
        }
        assertThat(without).isBetween(30L, 100L);
    }
}

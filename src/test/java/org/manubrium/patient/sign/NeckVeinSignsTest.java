package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;

/** What published descriptions say of neck veins, read off bodies that have nothing but moved quantities. */
class NeckVeinSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(60);
    private static final Bedside FAILING =
            HEALTHY.shift("right-atrial-pressure", 8).shift("right-heart-reserve", -0.8);

    private static final double FINE = 0.02;
    private static final double COARSE = 0.05;

    private static double height(Bedside patient, String angle) {
        return patient.amount("neck-vein-height", Map.of("bed-angle", angle));
    }

    private static double mean(List<Double> samples) {
        return samples.stream().mapToDouble(d -> d).average().orElseThrow();
    }

    @Nested
    class Height {
        /** Canadian student notes; estimate of central venous pressure: 1 mmHg is 1.36 cm of water. */
        @Test
        @DisplayName("X47 lying flat, 3 cm above the sternal angle and five make 8 cm of water, 5.9 mmHg")
        void heightAndFiveIsThePressureInOneLyingFlat() {
            VenousColumn column =
                    VenousColumn.of(HEALTHY.shift("right-atrial-pressure", 1).body());

            assertThat(column.height(0)).isCloseTo(3, within(1e-9));
            assertThat(column.pressure()).isEqualTo(3 + 5);
            assertThat(column.pressure() / 1.36).isCloseTo(5.9, within(0.05));
        }

        /** PMC10513035, Table 5: the sternal angle stands 5, 8 and 10 cm above the right atrium at 0, 30 and 45 degrees. */
        @ParameterizedTest
        @CsvSource({"30, 15, 7", "30, 12, 4", "45, 16, 6", "45, 15, 5"})
        void theOffsetGrowsWithTheAngleOfTheBed(String angle, double pressure, double expected) {
            Bedside patient = HEALTHY.shift("right-atrial-pressure", pressure - 7);

            assertThat(height(patient, angle)).isCloseTo(expected, within(0.1));
        }

        /** Bickley: lower the bed if the vein is empty, sit the patient up if it is full. */
        @Test
        void theBedIsMovedToFindTheTop() {
            Bedside blocked = HEALTHY.shift("caval-patency", -1);

            assertThat(tilt(HEALTHY)).isLessThan(30);
            assertThat(tilt(FAILING)).isBetween(30.0, 60.0);
            assertThat(tilt(blocked)).isGreaterThan(60);
            assertThat(FAILING.sign("neck-vein-height").normal()).contains(false);
            assertThat(FAILING.meaning("neck-vein-height")).isEqualTo("right-atrium-high");
            assertThat(blocked.meaning("neck-vein-height")).isEqualTo("caval-block");
        }

        private static double tilt(Bedside patient) {
            return patient.show("neck-vein-wave", Map.of()).measures().get(0).amount();
        }

        @Test
        void whatTheClavicleHidesIsNotSeenAndTheJawCutsOffTheRest() {
            Map<String, String> upright = Map.of("bed-tilt", "90");
            Map<String, String> flat = Map.of("bed-tilt", "0");

            assertThat(HEALTHY.sign("neck-vein-pulsation", upright).reading()).hasToString("Seen[seen=not-seen]");
            assertThat(FAILING.sign("neck-vein-pulsation", flat).reading()).hasToString("Seen[seen=full]");
            assertThat(HEALTHY.word("neck-vein-pulsation")).isEqualTo("moves");
        }

        /** Applefeld: under 5 cm is low; veins that stay empty lying flat suggest marked depletion (remembered). */
        @Test
        void emptyVeinsShowOnlyLyingFlat() {
            Bedside dry = HEALTHY.shift("right-atrial-pressure", -6);
            Map<String, String> flat = Map.of("bed-angle", "0");

            assertThat(dry.sign("neck-vein-height", flat).normal()).contains(false);
            assertThat(HEALTHY.sign("neck-vein-height", flat).normal()).contains(true);
            assertThat(dry.sign("neck-vein-height").normal()).contains(true);
        }
    }

    @Nested
    class Waves {
        /** Common practice, no source: flat veins that have fallen in show no pulsation. */
        @Test
        void aColumnThatIsNotSeenDoesNotMoveEither() {
            Bedside bled = Bedside.healthy(50).condition("blood-loss", Side.NONE);

            assertThat(bled.sign("neck-vein-pulsation").reading()).hasToString("Seen[seen=not-seen]");
            assertThat(bled.curve("neck-vein-pulsation", "column").stream().distinct())
                    .hasSize(1);
            assertThat(HEALTHY.curve("neck-vein-pulsation", "column").stream().distinct())
                    .hasSizeGreaterThan(20);
        }

        private static List<Double> beat(Bedside patient) {
            List<Double> column = patient.curve("neck-vein-wave", "column");
            List<Double> carotid = patient.curve("neck-vein-wave", "carotid");
            int upstroke = IntStream.range(20, carotid.size() - 30)
                    .filter(i -> carotid.get(i) < 0.1 && carotid.get(i + 1) > carotid.get(i) + 0.05)
                    .findFirst()
                    .orElseThrow();
            return column.subList(upstroke - 15, upstroke + 30);
        }

        /** The moment of the highest sample between two moments, in seconds from the carotid upstroke. */
        private static double peak(List<Double> beat, double from, double to) {
            int first = index(from);
            int at = IntStream.range(first, index(to))
                    .reduce((a, b) -> beat.get(b) > beat.get(a) ? b : a)
                    .orElseThrow();
            return at * FINE - 0.3;
        }

        private static int index(double seconds) {
            return (int) Math.round((seconds + 0.3) / FINE);
        }

        private static double at(List<Double> beat, double seconds) {
            return beat.get(index(seconds));
        }

        /** Applefeld, Clinical Methods (3rd ed.), ch. 19. */
        @Test
        @DisplayName(
                "X48 a peaks before the carotid upstroke and v after it, y follows v; in fibrillation there is no a")
        void theWavesKeepTheirPlacesInTheBeat() {
            List<Double> beat = beat(HEALTHY);
            List<Double> unled = beat(HEALTHY.shift("atrial-contraction", -1));

            assertThat(peak(beat, -0.3, 0.04)).isBetween(-0.2, -0.02);
            assertThat(peak(beat, 0.2, 0.6)).isBetween(0.28, 0.46);
            assertThat(at(beat, 0.5)).isLessThan(at(beat, 0.36));
            assertThat(at(beat, -0.12)).isGreaterThan(at(beat, 0.36));
            assertThat(at(beat, 0.18)).isLessThan(at(beat, 0.5));
            assertThat(at(unled, -0.12) - at(unled, -0.28)).isCloseTo(0, within(1.0));
            assertThat(HEALTHY.shift("atrial-contraction", -1).word("neck-vein-wave"))
                    .isEqualTo("no-a");
        }

        /** Harrison's Manual; Int J Clin Cardiol 2:019 Table 4; Ranganathan ch. 4. */
        @ParameterizedTest
        @CsvSource({
            "tricuspid-leak, 1, systolic-wave, tricuspid-leaks",
            "tricuspid-stenosis, 1, giant-a, tricuspid-narrow",
            "right-ventricle-stiffness, 1, giant-a, ventricle-stiff",
            "pericardial-restraint, 1, deep-y, pericardium-tight",
            "pericardial-fluid, 1, no-y, pericardium-full",
            "atrioventricular-dissociation, 1, cannon-a, atria-apart",
            "caval-patency, -1, still, caval-block",
            "atrial-contraction, -1, no-a, atria-idle"
        })
        void eachDepartureHasItsWave(String quantity, double by, String word, String meaning) {
            Bedside patient = HEALTHY.shift(quantity, by);

            assertThat(patient.word("neck-vein-wave")).isEqualTo(word);
            assertThat(patient.meaning("neck-vein-wave")).isEqualTo(meaning);
        }

        /** The word follows the drawn curve: what is named tall is tall in it, what is named still does not move. */
        @Test
        void theCurvesShowWhatTheWordsSay() {
            Bedside leaking = HEALTHY.shift("tricuspid-leak", 1).shift("right-atrial-pressure", 8);
            Bedside blocked = HEALTHY.shift("caval-patency", -1);

            assertThat(swing(leaking)).isGreaterThan(2 * swing(FAILING));
            assertThat(swing(blocked)).isZero();
            assertThat(swing(HEALTHY)).isGreaterThan(8);
        }

        /** Harrison's Manual: cannon waves, uneven, where atria and ventricles beat apart. */
        @Test
        void someBeatsOfAtriaApartAreCannonsAndMostAreNot() {
            Bedside apart = HEALTHY.shift("atrioventricular-dissociation", 1).shift("heart-rate", -35);
            List<Double> column = apart.curve("neck-vein-wave", "column", Map.of("bed-tilt", "30"));
            double usual = mean(column);

            assertThat(Collections.max(column) - usual).isGreaterThan(20);
            assertThat(column.stream().filter(d -> d > usual + 20).count()).isLessThan(column.size() / 10);
        }

        private static double swing(Bedside patient) {
            List<Double> column = patient.curve("neck-vein-wave", "column");
            return Collections.max(column) - Collections.min(column);
        }

        /** Canadian student notes on telling vein from artery. */
        @Test
        @DisplayName("X49 the vein falls on sitting up and on breathing in; the artery does neither")
        void theVeinMovesWithPositionAndBreathAndTheArteryDoesNot() {
            Map<String, String> lower = Map.of("bed-tilt", "30");
            Map<String, String> higher = Map.of("bed-tilt", "60");
            List<Double> low = FAILING.curve("neck-vein-wave", "column", lower);
            List<Double> high = FAILING.curve("neck-vein-wave", "column", higher);

            assertThat(mean(high)).isLessThan(mean(low) - 10);
            assertThat(FAILING.curve("neck-vein-wave", "carotid", lower))
                    .isEqualTo(FAILING.curve("neck-vein-wave", "carotid", higher));
            assertThat(HEALTHY.word("neck-vein-breathing")).isEqualTo("falls");
            List<Double> column = HEALTHY.curve("neck-vein-breathing", "column");
            List<Double> breath = HEALTHY.curve("neck-vein-breathing", "breath in");
            assertThat(average(column, breath, true)).isLessThan(average(column, breath, false) - 5);
        }

        private static double average(List<Double> column, List<Double> breath, boolean in) {
            return IntStream.range(0, column.size())
                    .filter(i -> in == breath.get(i) > 0.5)
                    .mapToDouble(column::get)
                    .average()
                    .orElseThrow();
        }
    }

    @Nested
    class Load {
        /** Ewy 1988, Ann Intern Med 109:456; Cook & Simel 1996: a rise of 4 cm held through ten seconds. */
        @Test
        @DisplayName("X50 a rise held for ten seconds is positive, one that fades is not; it falls back at release")
        void aRiseThatIsHeldIsPositive() {
            assertThat(FAILING.amount("abdominojugular-test")).isGreaterThanOrEqualTo(4);
            assertThat(HEALTHY.amount("abdominojugular-test")).isLessThan(1);
            assertThat(FAILING.sign("abdominojugular-test").normal()).contains(false);
            assertThat(FAILING.meaning("abdominojugular-test")).isEqualTo("right-heart-failing");
            assertThat(HEALTHY.sign("abdominojugular-test").normal()).contains(true);

            List<Double> failing = FAILING.curve("abdominojugular-test", "column");
            List<Double> healthy = HEALTHY.curve("abdominojugular-test", "column");
            assertThat(second(failing, 10.5) - second(failing, 0.5)).isGreaterThan(35);
            assertThat(second(failing, 10.5) - second(failing, 14.5)).isGreaterThan(35);
            assertThat(second(healthy, 2.6) - second(healthy, 0.5)).isGreaterThan(8);
            assertThat(second(healthy, 10.5) - second(healthy, 0.5)).isLessThan(10);
        }

        private static double second(List<Double> samples, double from) {
            int first = (int) Math.round(from / COARSE);
            return mean(samples.subList(first, first + (int) (1 / COARSE)));
        }

        /** Harrison's Manual on the superior vena cava; lack of pulsation and of the test from memory. */
        @Test
        void aBlockedVeinIsHighStillAndDeafToTheHand() {
            Bedside blocked = HEALTHY.shift("caval-patency", -1);

            assertThat(height(blocked, "90")).isGreaterThan(10);
            assertThat(blocked.word("neck-vein-pulsation")).isEqualTo("still");
            assertThat(blocked.amount("abdominojugular-test")).isZero();
            assertThat(blocked.word("neck-vein-breathing")).isEqualTo("unchanged");
        }

        /** Harrison's Manual; Int J Clin Cardiol 2:019; Garg 2000: rises in constriction, not expected in tamponade. */
        @Test
        void constrictionRisesWithABreathInAndTamponadeFalls() {
            assertThat(HEALTHY.shift("pericardial-restraint", 1).word("neck-vein-breathing"))
                    .isEqualTo("rises");
            assertThat(HEALTHY.shift("pericardial-fluid", 1).word("neck-vein-breathing"))
                    .isEqualTo("falls");
            assertThat(FAILING.word("neck-vein-breathing")).isEqualTo("unchanged");
        }
    }
}

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
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Item;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What holds for every pair of eyes. */
class PupilPropertiesTest {

    @Test
    void healthyEyesAreNormalAtEveryAgeAndInEveryPerson() {
        for (int seed = 1; seed <= 200; seed++) {
            Bedside person = Bedside.person(20 + seed * 70 / 200, Variation.of(seed));
            assertThat(person.system("eyes"))
                    .as("seed %d", seed)
                    .isNotEmpty()
                    .allSatisfy(sign -> assertThat(sign.normal()).contains(true));
        }
    }

    /** Lam, Thompson & Corbett 1987; PupilX; photographic dilation lag in 39 normal people. */
    @Test
    @DisplayName("X37 born unequal: 1 mm or less, the same in light and dark, no lag; 19 % differ by 0.4 mm or more")
    void peopleBornUnequalAreTheSameInLightAndDark() {
        int unequal = 0;
        for (int seed = 1; seed <= 1000; seed++) {
            Bedside person = Bedside.person(40, Variation.of(seed));
            double dark = difference(person, "pupil-size-dark");
            double light = difference(person, "pupil-size-light");
            assertThat(Math.abs(dark)).isLessThanOrEqualTo(1);
            assertThat(dark).isCloseTo(light, within(0.2));
            if (seed <= 50) {
                assertThat(person.amount("pupil-dark-lag")).isLessThanOrEqualTo(0.3);
            }
            unequal += Math.abs(dark) >= 0.395 ? 1 : 0;
        }
        assertThat(unequal / 1000.0).isCloseTo(0.19, within(0.05));
    }

    private static double difference(Bedside person, String manoeuvre) {
        return person.amount(manoeuvre + ":right") - person.amount(manoeuvre + ":left");
    }

    @Test
    void mirroringThePatientMirrorsEverySign() {
        for (String where : List.of(
                "third nerve right",
                "optic nerve right",
                "optic tract right",
                "carotid plexus right",
                "ciliary ganglion right")) {
            Bedside patient = Bedside.person(55, Variation.of(17)).lesion(where, 0.8, "8 weeks");
            Bedside mirrored = patient.mirrored();
            for (Sign sign : patient.system("eyes")) {
                Item other = sign.item().mirrored();
                String seen = mirrored.sign(other.toString()).reading().toString();
                assertThat(seen).as(where + " " + other).isEqualTo(swapped(sign));
            }
        }
    }

    private static String swapped(Sign sign) {
        String text = sign.reading().toString();
        return text.contains("right-defect")
                ? text.replace("right-defect", "left-defect")
                : text.replace("left-defect", "right-defect");
    }

    @Test
    void moreLossOnTheWayOutNeverMakesAPupilReactMore() {
        for (String where : List.of("third nerve left", "iris sphincter left", "optic nerve left")) {
            double before = Double.MAX_VALUE;
            for (double loss = 0; loss <= 1; loss += 0.1) {
                List<Double> curve =
                        Bedside.healthy(50).lesion(where, loss, "3 days").curve("pupil-light-direct:left", "left");
                double share = 1 - curve.stream().mapToDouble(d -> d).min().orElseThrow() / curve.get(0);
                assertThat(share).as(where).isLessThanOrEqualTo(before + 1e-9);
                before = share;
            }
        }
    }

    @Test
    void whatIsShownHasTheSameShapeInEveryPatient() {
        Bedside healthy = Bedside.healthy(40);
        Bedside ill = healthy.lesion("third nerve right", 1, "3 days").lesion("optic nerve left", 1, "3 days");
        for (Item item : Bedside.items("eyes")) {
            if (!item.manoeuvre().matches("pupil-.*|swinging-light|lid-height")) {
                continue;
            }
            var seen = healthy.show(item.toString(), Map.of());
            var other = ill.show(item.toString(), Map.of());
            assertThat(other.sign()).isEqualTo(seen.sign());
            assertThat(other.measures()).isEqualTo(seen.measures());
            assertThat(other.words()).isEqualTo(seen.words());
            assertThat(other.curves()).zipSatisfy(seen.curves(), (a, b) -> {
                assertThat(a.name()).isEqualTo(b.name());
                assertThat(a.samples()).hasSameSizeAs(b.samples());
            });
        }
    }
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What must hold of the heart whatever ails it. */
class HeartPropertiesTest {
    private static List<Bedside> patients(Bedside person) {
        List<Bedside> patients = new ArrayList<>(List.of(person));
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            if (condition.effects().stream().noneMatch(e -> e.site().isEmpty())) {
                continue;
            }
            Side side = condition.sided() ? Side.RIGHT : Side.NONE;
            patients.add(person.condition(condition.id(), side));
        }
        return patients;
    }

    private static List<Manoeuvre> manoeuvres() {
        return Bedside.REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.system().equals("heart") || m.reader().equals("pulse-wave"))
                .toList();
    }

    private static List<Sign> signs(Bedside patient) {
        return manoeuvres().stream()
                .flatMap(m -> Bedside.REFERENCE.signs().examine(patient.body(), m).stream())
                .toList();
    }

    @Test
    void aHealthyHeartIsNormalAtEveryAgeWhoeverOwnsIt() {
        for (int age = 20; age <= 95; age += 5) {
            for (long seed = 0; seed < 25; seed++) {
                assertThat(signs(Bedside.person(age, Variation.of(seed))))
                        .allSatisfy(
                                sign -> assertThat(sign.normal()).as("%s", sign).contains(true));
            }
        }
    }

    @Test
    void whatIsShownHasOneShapeForEveryPatient() {
        Map<Item, String> shapes = new HashMap<>();
        for (Bedside patient : patients(Bedside.person(62, Variation.of(9)))) {
            for (Manoeuvre manoeuvre : manoeuvres()) {
                for (Item item : Examination.items(manoeuvre)) {
                    String shape = shape(patient.show(item.toString(), Map.of()));

                    assertThat(shapes.computeIfAbsent(item, i -> shape)).isEqualTo(shape);
                }
            }
        }
    }

    private static String shape(Appearance shown) {
        StringBuilder shape = new StringBuilder(shown.sign() + shown.words());
        shown.curves()
                .forEach(c -> shape.append(
                        "/" + c.name() + c.unit() + c.stepMs() + c.samples().size()));
        shown.measures().forEach(m -> shape.append("/" + m.label() + m.unit()));
        return shape.toString();
    }

    @Test
    void everyAbnormalSignOfAConditionIsExplained() {
        for (Bedside patient : patients(Bedside.healthy(55))) {
            assertThat(signs(patient))
                    .filteredOn(sign -> !sign.normal().orElse(true))
                    .allSatisfy(sign -> assertThat(sign.meaning().term())
                            .as("%s of %s", sign, patient.body().ailments())
                            .isNotEqualTo("unexplained"));
        }
    }

    /** Etchells 1997: a late peak, a slow pulse and a soft second sound go with a tight valve. */
    @Test
    void aNarrowerAorticValveIsNeverSofterNorItsPeakEarlierUntilTheVentricleFails() {
        double level = -100;
        double peak = 0;
        for (double area = 3.5; area >= 0.6; area -= 0.1) {
            Bedside patient = Bedside.healthy(50).shift("aortic-valve-area", area - 3.5);
            Finding loud = patient.sign("murmur-loudness@aortic").finding();
            double now = patient.word("murmur-shape").equals("late-peak") ? 1 : 0;

            assertThat(((Finding.Graded) loud).amount()).isGreaterThanOrEqualTo(level);
            assertThat(now).isGreaterThanOrEqualTo(peak);
            level = ((Finding.Graded) loud).amount();
            peak = now;
        }
        assertThat(peak).isEqualTo(1);
        Bedside tight = Bedside.healthy(50).shift("aortic-valve-area", -2.7);
        Finding failing = tight.shift("left-ventricle-contraction", -0.4)
                .sign("murmur-loudness@aortic")
                .finding();
        assertThat(((Finding.Graded) failing).amount())
                .isLessThan(
                        ((Finding.Graded) tight.sign("murmur-loudness@aortic").finding()).amount());
    }

    /** McGee 4th ed. ch. 40: the longer the lead of the atria, the softer the first sound. */
    @Test
    void aLongerLeadNeverMakesTheFirstSoundLouder() {
        double before = 100;
        for (double lead = 90; lead <= 320; lead += 10) {
            double level =
                    new org.manubrium.patient.heart.ValveSounds(HeartSounds.heart(Bedside.healthy(50))).first(lead);

            assertThat(level).isLessThanOrEqualTo(before);
            before = level;
        }
    }

    /** Whatever stands between the heart and the ear takes from every sound alike. */
    @Test
    void fluidRoundTheHeartMufflesAllItsSounds() {
        Bedside murmuring = Bedside.healthy(50).condition("mitral-regurgitation", Side.NONE);
        Bedside covered = murmuring.shift("pericardial-fluid", 0.6);

        for (String name : List.of("thumps", "noise while the heart empties")) {
            assertThat(most(covered, name)).isLessThan(most(murmuring, name));
        }
    }

    private static double most(Bedside patient, String curve) {
        return patient.curve("murmur-timing@mitral", curve).stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
    }
}

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Item;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What must hold of the chest whatever ails it. */
class ChestPropertiesTest {
    private static final double[] SEVERITIES = {0.3, 0.6, 1};

    /** Every condition of the chest at every level, on the right where it has a side, at three severities. */
    private static List<Bedside> patients(Bedside person) {
        List<Bedside> patients = new ArrayList<>(List.of(person));
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            if (condition.effects().stream()
                    .anyMatch(e -> e.quantity().contains("lung.")
                            || e.quantity().startsWith("breathing.")
                            || e.quantity().startsWith("chest.")
                            || e.quantity().startsWith("airway."))) {
                String side = condition.sided() ? " right" : " none";
                for (String level : condition.levels().isEmpty() ? List.of("") : condition.levels()) {
                    for (double severity : SEVERITIES) {
                        String said = condition.id() + side + (level.isEmpty() ? "" : " " + level);
                        patients.add(ChestPatients.with(said, person, severity));
                    }
                }
            }
        }
        return patients;
    }

    @Test
    void aHealthyChestIsNormalAtEveryAgeWhoeverOwnsIt() {
        for (int age = 20; age <= 90; age += 5) {
            for (long seed = 0; seed < 25; seed++) {
                assertThat(Bedside.person(age, Variation.of(seed)).system("chest"))
                        .allSatisfy(
                                sign -> assertThat(sign.normal()).as("%s", sign).contains(true));
            }
        }
    }

    @Test
    void mirroringThePatientMirrorsEveryFinding() {
        for (Bedside patient : patients(Bedside.person(61, Variation.of(17)))) {
            Map<Item, Finding> mirrored = new HashMap<>();
            patient.mirrored().system("chest").forEach(sign -> mirrored.put(sign.item(), sign.finding()));

            assertThat(patient.system("chest"))
                    .allSatisfy(sign ->
                            assertThat(mirrored.get(mirror(sign.item()))).isEqualTo(sign.finding()));
        }
    }

    private static Item mirror(Item item) {
        return item.side() == Side.NONE ? item : item.mirrored();
    }

    @Test
    void theSameFindingOnTheSamePersonIsShownAlikeWhateverCausesIt() {
        Map<Item, Map<Finding, Appearance>> shown = new HashMap<>();
        for (Bedside patient : patients(Bedside.person(48, Variation.of(5)))) {
            for (Sign sign : patient.system("chest")) {
                Appearance now = patient.show(sign.item().toString(), Map.of());
                Appearance before =
                        shown.computeIfAbsent(sign.item(), i -> new HashMap<>()).putIfAbsent(sign.finding(), now);

                assertThat(before == null || before.equals(now)).as("%s", sign).isTrue();
            }
        }
    }

    @Test
    void whatIsShownHasOneShapeForEveryPatient() {
        Map<String, String> shapes = new HashMap<>();
        for (Bedside patient : patients(Bedside.person(70, Variation.of(9)))) {
            for (Item item : Bedside.items("chest")) {
                String shape = shape(patient.show(item.toString(), Map.of()));

                assertThat(shapes.computeIfAbsent(item.manoeuvre(), m -> shape)).isEqualTo(shape);
            }
        }
    }

    private static String shape(Appearance shown) {
        StringBuilder shape = new StringBuilder(shown.sign());
        shown.curves()
                .forEach(c -> shape.append(
                        "/" + c.name() + c.unit() + c.stepMs() + c.samples().size()));
        shown.measures().forEach(m -> shape.append("/" + m.label() + m.unit()));
        return shape.toString();
    }

    @Test
    void everyAbnormalSignOfAConditionIsExplained() {
        for (Bedside patient : patients(Bedside.healthy(55))) {
            assertThat(patient.system("chest"))
                    .filteredOn(sign -> !sign.normal().orElse(true))
                    .allSatisfy(sign ->
                            assertThat(sign.meaning().term()).as("%s", sign).isNotEqualTo("unexplained"));
        }
    }

    @Test
    void moreFluidNeverMakesTheNoteLonger() {
        double before = Double.MAX_VALUE;
        for (double fluid = 0; fluid <= 1; fluid += 0.05) {
            Finding finding = Bedside.healthy(40)
                    .shift("lung.left.lower-back.fluid", fluid)
                    .sign("percussion-back:left@lower-back")
                    .finding();
            double note = ((Finding.Graded) finding).amount();

            assertThat(note).isLessThan(before);
            before = note;
        }
    }
}

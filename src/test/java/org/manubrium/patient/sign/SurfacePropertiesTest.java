package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Item;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.SkinTone;
import org.manubrium.patient.Variation;

/** What must hold of approach, hands, skin, arteries, legs and joints, whoever is examined and whatever ails them. */
class SurfacePropertiesTest {
    private static final List<String> SYSTEMS = List.of("approach", "hands", "skin", "arteries", "legs", "joints");

    private static List<Sign> signs(Bedside patient) {
        List<Sign> found = new ArrayList<>();
        SYSTEMS.forEach(system -> found.addAll(patient.system(system)));
        return found;
    }

    private static Bedside of(int age, long seed, SkinTone tone) {
        Person person = new Person(age, seed % 2 == 0 ? Sex.FEMALE : Sex.MALE, Variation.of(seed), tone);
        return new Bedside(new Body(Bedside.REFERENCE.anatomy(), Bedside.REFERENCE.physiology(), person, List.of()));
    }

    /** Every condition on the side named, at each level, in full. */
    private static List<Bedside> patients(Bedside person, Side side) {
        List<Bedside> found = new ArrayList<>();
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            List<Optional<String>> levels = condition.levels().isEmpty()
                    ? List.of(Optional.empty())
                    : condition.levels().stream().map(Optional::of).toList();
            for (Optional<String> level : levels) {
                Side of = condition.sided() ? side : Side.NONE;
                found.add(person.ailing(
                        Bedside.REFERENCE.conditions().ailment(condition, of, level, 1, Optional.empty())));
            }
        }
        return found;
    }

    @ParameterizedTest
    @EnumSource(SkinTone.class)
    void healthyPeopleAreNormalAtEveryAgeInEverySkin(SkinTone tone) {
        for (int age = 20; age <= 95; age += 15) {
            for (long seed = 0; seed < 40; seed++) {
                assertThat(signs(of(age, seed, tone))).allSatisfy(sign -> {
                    assertThat(sign.normal()).as("%s", sign).contains(true);
                    assertThat(sign.meaning().term()).isEqualTo("nothing-abnormal");
                });
            }
        }
    }

    @Test
    void mirroringThePatientMirrorsEveryReading() {
        for (Bedside patient : patients(of(58, 17, SkinTone.LIGHT), Side.RIGHT)) {
            Bedside mirrored = patient.mirrored();
            for (Sign sign : signs(patient)) {
                String there = mirrored.sign(sign.item().mirrored().toString())
                        .reading()
                        .toString();
                assertThat(there)
                        .as("%s", sign)
                        .isEqualTo(swapped(sign.reading().toString()));
            }
        }
    }

    private static String swapped(String reading) {
        return reading.replaceAll("\\bright\\b", "\0")
                .replaceAll("\\bleft\\b", "right")
                .replace("\0", "left");
    }

    @Test
    void everyAbnormalSignIsExplainedByWhatTheSignReads() {
        for (Bedside patient : patients(of(50, 3, SkinTone.LIGHT), Side.LEFT)) {
            assertThat(signs(patient))
                    .filteredOn(sign -> !sign.normal().orElseThrow())
                    .allSatisfy(sign -> {
                        assertThat(sign.meaning().term()).as("%s", sign).isNotEqualTo("unexplained");
                        assertThat(sign.meaning().ailments()).as("%s", sign).isNotEmpty();
                    });
        }
    }

    @Test
    void whatIsShownHasTheSameShapeInEveryPatient() {
        Bedside healthy = of(50, 0, SkinTone.BROWN);
        Map<Item, String> shapes = new HashMap<>();
        SYSTEMS.forEach(system -> Bedside.items(system)
                .forEach(item -> shapes.put(item, shape(healthy.show(item.toString(), Map.of())))));
        for (Bedside patient : patients(of(71, 5, SkinTone.DARK), Side.RIGHT)) {
            shapes.forEach((item, shape) ->
                    assertThat(shape(patient.show(item.toString(), Map.of()))).isEqualTo(shape));
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

    /** A condition that nobody can find has no place in the tables. */
    @Test
    void everyConditionOfTheseSystemsAloneShowsSomethingInThem() {
        Bedside.REFERENCE.conditions().all().stream()
                .filter(condition -> !condition.effects().isEmpty())
                .filter(condition -> condition.effects().stream()
                        .allMatch(e -> e.quantity().matches("(joint|artery|vein|leg|skin|blood|nail|body)\\..*")))
                .forEach(condition -> {
                    Side side = condition.sided() ? Side.RIGHT : Side.NONE;
                    assertThat(signs(Bedside.healthy(50).condition(condition.id(), side)))
                            .as(condition.id())
                            .anyMatch(sign -> !sign.normal().orElseThrow());
                });
    }
}

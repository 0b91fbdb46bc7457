package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.SkinTone;
import org.manubrium.patient.Variation;

/** What must hold of approach, hands, skin, arteries, legs and joints, whoever is examined and whatever ails them. */
class SurfacePropertiesTest extends SystemProperties {
    SurfacePropertiesTest() {
        super("approach", "hands", "skin", "arteries", "legs", "joints");
    }

    private static Bedside of(int age, long seed, SkinTone tone) {
        Person person = new Person(age, seed % 2 == 0 ? Sex.FEMALE : Sex.MALE, Variation.of(seed), tone);
        return new Bedside(new Body(Bedside.REFERENCE.anatomy(), Bedside.REFERENCE.physiology(), person, List.of()));
    }

    @Override
    Bedside person(long seed) {
        return of(58, seed, SkinTone.LIGHT);
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

package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Build;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.SkinTone;
import org.manubrium.patient.Variation;

/** What build does to signs, and that it makes nobody ill. Common teaching, from memory. */
class BuildPropertiesTest {
    private static final int SEEDS = 16;

    private static Bedside person(Build build, int age, long seed) {
        Sex sex = seed % 2 == 0 ? Sex.FEMALE : Sex.MALE;
        Person person = new Person(age, sex, Variation.of(seed), SkinTone.LIGHT, build);
        return new Bedside(new Body(Bedside.REFERENCE.anatomy(), Bedside.REFERENCE.physiology(), person, List.of()));
    }

    @ParameterizedTest
    @EnumSource(Build.class)
    void aHealthyPersonOfAnyBuildIsNormalEverywhere(Build build) {
        List<String> strayed = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            Bedside patient = person(build, 20 + 5 * seed, seed);
            Bedside.REFERENCE.examination().manoeuvres().stream()
                    .map(manoeuvre -> manoeuvre.system())
                    .distinct()
                    .flatMap(system -> patient.system(system).stream())
                    .filter(sign -> !sign.normal().equals(Optional.of(true)))
                    .map(Sign::toString)
                    .forEach(strayed::add);
        }
        assertThat(strayed).isEmpty();
    }

    private static long count(Build build, String item, List<String> words) {
        long found = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            found += words.contains(person(build, 40, seed).word(item)) ? 1 : 0;
        }
        return found;
    }

    @Test
    void theApexBeatIsFeltInTheSlightAndSeldomInTheHeavy() {
        long slight = count(Build.SLIGHT, "apex-place", List.of("inside"));
        long average = count(Build.AVERAGE, "apex-place", List.of("inside"));
        long heavy = count(Build.HEAVY, "apex-place", List.of("inside"));

        assertThat(slight).isGreaterThanOrEqualTo(average);
        assertThat(average).isGreaterThan(heavy);
        assertThat(heavy).isLessThanOrEqualTo(SEEDS / 4);
    }

    @Test
    void theBeatOfTheAortaIsFeltInTheSlightAndNotInTheHeavy() {
        assertThat(count(Build.SLIGHT, "aorta-beat", List.of("forwards"))).isGreaterThan(SEEDS / 2);
        assertThat(count(Build.HEAVY, "aorta-beat", List.of("forwards"))).isZero();
    }

    @Test
    void theLowerEndOfTheRightKidneyMayBeFeltInTheSlightOnly() {
        assertThat(count(Build.SLIGHT, "kidney-between-hands:right", List.of("lower-end")))
                .isBetween(1L, SEEDS - 1L);
        assertThat(count(Build.SLIGHT, "kidney-between-hands:left", List.of("lower-end")))
                .isZero();
        assertThat(count(Build.AVERAGE, "kidney-between-hands:right", List.of("lower-end")))
                .isZero();
    }

    @Test
    void theVeinsOfAThickNeckMoveLessToTheEyeAndStandAsHigh() {
        assertThat(swing(Build.HEAVY)).isPositive().isLessThan(0.8 * swing(Build.AVERAGE));
        assertThat(person(Build.HEAVY, 40, 0).amount("neck-vein-height"))
                .isEqualTo(person(Build.AVERAGE, 40, 0).amount("neck-vein-height"));
    }

    private static double swing(Build build) {
        Bedside raised = person(build, 40, 0).shift("right-atrial-pressure", 6);
        List<Double> column = raised.curve("neck-vein-wave", "column");
        return column.stream().mapToDouble(x -> x).max().orElseThrow()
                - column.stream().mapToDouble(x -> x).min().orElseThrow();
    }

    @Test
    void aThickWallHidesALargeLiverAndSpleen() {
        Bedside thin = person(Build.SLIGHT, 50, 0).shift("spleen.length", 5).shift("liver.span", 1);
        Bedside thick = person(Build.HEAVY, 50, 0).shift("spleen.length", 5).shift("liver.span", 1);

        assertThat(thin.amount("spleen-edge")).isGreaterThan(thick.amount("spleen-edge"));
        assertThat(thin.amount("liver-edge")).isPositive();
        assertThat(thick.amount("liver-edge")).isZero();
    }

    @Test
    void breathAndNoteAreFainterInTheHeavyAlikeOnBothSides() {
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            String at = ":" + side.word() + "@lower-back";
            double quieter = level(Build.AVERAGE, "breath-sounds-back" + at, "breath in, level")
                    - level(Build.HEAVY, "breath-sounds-back" + at, "breath in, level");
            assertThat(quieter).isBetween(2.0, 8.0);
            assertThat(level(Build.HEAVY, "percussion-back" + at, "falls by 20 dB in"))
                    .isLessThan(level(Build.AVERAGE, "percussion-back" + at, "falls by 20 dB in"));
        }
    }

    private static double level(Build build, String item, String label) {
        return person(build, 40, 0).show(item, Map.of()).measures().stream()
                .filter(measure -> measure.label().equals(label))
                .findFirst()
                .orElseThrow()
                .amount();
    }
}

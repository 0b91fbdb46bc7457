package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;

class DifferentialRuleTest {
    private static final Diagnosis TRUTH = new Diagnosis("root", "root", List.of("radiculopathy"));

    private static double credit(String... named) {
        return DifferentialRule.credit(Guess.parse(List.of(named)), List.of(TRUTH))
                .amount();
    }

    @Test
    void theTruthNamedFirstEarnsAllAndLaterLess() {
        assertThat(credit("root")).isEqualTo(1);
        assertThat(credit("root", "nerve")).isEqualTo(1);
        assertThat(credit("nerve", "root")).isEqualTo(0.5);
        assertThat(credit("nerve", "cord", "root")).isEqualTo(1 / 3.0);
        assertThat(credit("nerve")).isZero();
    }

    @Test
    void anotherNameForTheTruthIsTheTruth() {
        assertThat(credit("radiculopathy=60", "nerve=40")).isEqualTo(1);
    }

    @Test
    void confidenceOutranksTheOrderAndTiesShare() {
        assertThat(credit("nerve=20", "root=80")).isEqualTo(1);
        assertThat(credit("root=50", "nerve=50")).isEqualTo(0.5);
    }

    @Test
    void namingEverythingEarnsLittle() {
        assertThat(credit("root=100", "a=100", "b=100", "c=100", "d=100", "e=100", "f=100"))
                .isEqualTo(1 / 7.0);
        assertThat(credit("a", "b", "c", "d", "e", "root")).isZero();
    }

    @Test
    void twoTruthsAreAveragedAndDoNotPushEachOtherBack() {
        Diagnosis other = new Diagnosis("thyroid", "thyroid", List.of());
        List<Diagnosis> both = List.of(TRUTH, other);

        assertThat(DifferentialRule.credit(Guess.parse(List.of("thyroid", "root")), both)
                        .amount())
                .isEqualTo(1);
        assertThat(DifferentialRule.credit(Guess.parse(List.of("root")), both).amount())
                .isEqualTo(0.5);
    }

    @Test
    void aConfidenceThatIsNoPercentageCountsAsNone() {
        assertThat(Guess.parse("root=maybe").confidence()).isEmpty();
        assertThat(Guess.parse("root=101").confidence()).isEmpty();
        assertThat(Guess.parse("root=70").confidence()).hasValue(70);
        assertThat(Guess.parse("root=70").diagnosis()).isEqualTo("root");
    }

    /** Against a slow reading of the rule: count for each truth who stands before it, and take the best of its names. */
    @Test
    void overRandomListsTheCreditIsWhatTheRuleSaysAndNeverFallsWhenTheTruthPassesAWrongName() {
        Random random = new Random(20261129);
        List<Diagnosis> truths = List.of(TRUTH, new Diagnosis("thyroid", "thyroid", List.of()));
        for (int round = 0; round < 2_000; round++) {
            List<String> names = names(random);
            List<Diagnosis> ailing = truths.subList(0, 1 + random.nextInt(2));
            double credit = DifferentialRule.credit(Guess.parse(names), ailing).amount();

            assertThat(credit).isBetween(0.0, 1.0).isCloseTo(slow(names, ailing), within(1e-12));
            int at = names.indexOf("root");
            boolean plain = names.stream().noneMatch(name -> name.contains("="));
            if (at > 0 && plain && ailing.stream().noneMatch(truth -> truth.accepts(names.get(at - 1)))) {
                List<String> better = new ArrayList<>(names);
                Collections.swap(better, at, at - 1);
                assertThat(DifferentialRule.credit(Guess.parse(better), ailing).amount())
                        .as("%s, then %s", names, better)
                        .isGreaterThanOrEqualTo(credit);
            }
        }
    }

    private static List<String> names(Random random) {
        List<String> names = new ArrayList<>(List.of("root", "radiculopathy", "thyroid", "nerve", "cord", "a", "b"));
        Collections.shuffle(names, random);
        boolean sure = random.nextBoolean();
        return names.subList(0, random.nextInt(names.size() + 1)).stream()
                .map(name -> sure ? name + "=" + 10 * random.nextInt(11) : name)
                .toList();
    }

    private static double slow(List<String> names, List<Diagnosis> truths) {
        List<Guess> given = Guess.parse(names);
        double sum = 0;
        for (Diagnosis truth : truths) {
            double best = 0;
            for (int i = 0; i < Math.min(5, given.size()); i++) {
                if (!truth.accepts(given.get(i).diagnosis())) {
                    continue;
                }
                int before = 0;
                for (int j = 0; j < given.size(); j++) {
                    String other = given.get(j).diagnosis();
                    boolean wrong = truths.stream().noneMatch(t -> t.accepts(other));
                    boolean ahead = given.get(i).confidence().isPresent()
                            ? given.get(j).confidence().getAsInt()
                                    >= given.get(i).confidence().getAsInt()
                            : j < i;
                    before += j != i && wrong && ahead ? 1 : 0;
                }
                best = Math.max(best, 1.0 / (1 + before));
            }
            sum += best;
        }
        return sum / truths.size();
    }
}

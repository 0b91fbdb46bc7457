package org.manubrium.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Examination;
import org.manubrium.reasoning.Shortest.Sufficient;
import org.manubrium.reasoning.plan.Planner;
import org.manubrium.reasoning.plan.Ways;
import org.manubrium.tables.Tables;

class ShortestTest {
    private static final Examination EXAMINATION = Tables.shipped().examination();
    private static final Planner PLANNER = new Planner(new Ways(EXAMINATION));
    private static final List<String> PLACES = List.of("lying-45", "lying-flat", "standing", "prone");
    private static final int CASES = 40;

    @Test
    void ofAFewStepsTheShortestSetIsThatFoundByTryingAll() {
        Random random = new Random(20);
        int found = 0;
        for (int i = 0; i < CASES; i++) {
            Evidence evidence = drawn(random, 4 + random.nextInt(6));
            Shortest shortest = shortest(evidence);
            Optional<Sufficient> one = shortest.find(0.9);

            assertThat(one.map(Sufficient::seconds)).isEqualTo(trying(evidence, shortest));
            found += one.isPresent() ? 1 : 0;
        }
        assertThat(found).isBetween(5, CASES);
    }

    @Test
    void whatIsFoundSufficesAndIsSaidToBeExact() {
        Random random = new Random(21);
        for (int i = 0; i < CASES; i++) {
            Evidence evidence = drawn(random, 8);
            shortest(evidence).find(0.9).ifPresent(found -> {
                Belief belief = evidence.start();
                for (int column : found.columns()) {
                    belief = belief.see(column);
                }
                assertThat(belief.chanceOfTruth()).isEqualTo(found.chance()).isGreaterThanOrEqualTo(0.9);
                assertThat(found.exact()).isTrue();
                assertThat(found.atLeast()).isEqualTo(found.seconds());
            });
        }
    }

    /** Of more steps than are searched the answer is no longer exact; the bound is never above the truth. */
    @Test
    void theBoundLiesBelowTheShortestOfAll() {
        Random random = new Random(22);
        int found = 0;
        for (int i = 0; i < CASES; i++) {
            Evidence evidence = drawn(random, Shortest.EXACT + 1);
            Shortest shortest = shortest(evidence);
            Optional<Sufficient> one = shortest.find(0.9);
            if (one.isPresent()) {
                found++;
                int least = trying(evidence, shortest).orElseThrow();
                assertThat(one.get().exact()).isFalse();
                assertThat(least).isBetween(one.get().atLeast(), one.get().seconds());
            }
        }
        assertThat(found).isPositive();
    }

    @Test
    void nothingSufficesWhereNothingTells() {
        assertThat(shortest(new Tiny(0.1, 0.5, 0.5).step("a", 5, 1, 1).evidence())
                        .find(0.9))
                .isEmpty();
    }

    private static Shortest shortest(Evidence evidence) {
        return new Shortest(evidence, PLANNER, "lying-45");
    }

    private static Evidence drawn(Random random, int steps) {
        Tiny tiny = new Tiny(0.1, 0.3, 0.3, 0.2, 0.2);
        for (int s = 0; s < steps; s++) {
            int[] shown = new int[4];
            for (int h = 0; h < shown.length; h++) {
                shown[h] = random.nextInt(2);
            }
            List<String> places = List.of(PLACES.get(random.nextInt(PLACES.size())));
            tiny.step("sign " + random.nextInt(steps), 3 + random.nextInt(20), places, shown);
        }
        return tiny.evidence();
    }

    private static Optional<Integer> trying(Evidence evidence, Shortest shortest) {
        int steps = evidence.columns().size();
        int least = Integer.MAX_VALUE;
        for (int set = 0; set < 1 << steps; set++) {
            Belief belief = evidence.start();
            List<Integer> columns = new ArrayList<>();
            for (int c = 0; c < steps; c++) {
                if ((set & 1 << c) != 0) {
                    columns.add(c);
                    belief = belief.see(c);
                }
            }
            if (belief.chanceOfTruth() >= 0.9) {
                least = Math.min(least, shortest.seconds(columns));
            }
        }
        return least == Integer.MAX_VALUE ? Optional.empty() : Optional.of(least);
    }
}

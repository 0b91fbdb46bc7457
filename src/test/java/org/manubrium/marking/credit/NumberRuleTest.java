package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.ForAll;

class NumberRuleTest {
    @ParameterizedTest
    @CsvSource({"10,1", "11,1", "9,1", "12,.5", "8,.5", "12.5,.25", "13,0", "7,0", "40,0"})
    void fullWithinTheToleranceThenALineToNothingAtThreeTolerances(double given, double expected) {
        assertThat(NumberRule.credit(given, 10, 1).amount()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void withoutToleranceOnlyTheNumberItselfCounts() {
        assertThat(NumberRule.credit(10, 10, 0).amount()).isEqualTo(1);
        assertThat(NumberRule.credit(10.1, 10, 0).amount()).isZero();
    }

    @Test
    void creditIsBoundedTheSameAboveAndBelowAndNeverRisesWithTheError() {
        ForAll.seeds(500, random -> {
            double truth = random.nextDouble(-50, 300);
            double tolerance = random.nextDouble(0, 20);
            double near = random.nextDouble(0, 80);
            double far = near + random.nextDouble(0, 20);
            double credit = NumberRule.credit(truth + near, truth, tolerance).amount();

            assertThat(credit).isBetween(0.0, 1.0);
            assertThat(NumberRule.credit(truth - near, truth, tolerance).amount())
                    .isCloseTo(credit, within(1e-9));
            assertThat(NumberRule.credit(truth + far, truth, tolerance).amount())
                    .isLessThanOrEqualTo(credit + 1e-9);
        });
    }
}

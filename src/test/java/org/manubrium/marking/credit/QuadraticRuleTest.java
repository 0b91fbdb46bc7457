package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuadraticRuleTest {
    /** By hand: 1 - 0.2² and 1 - 0.8². */
    @Test
    void eightyPerCentScoresMuchWhenRightAndLittleWhenWrong() {
        assertThat(QuadraticRule.score(0.8, true)).isCloseTo(0.96, within(1e-12));
        assertThat(QuadraticRule.score(0.8, false)).isCloseTo(0.36, within(1e-12));
    }

    @Test
    void scoreLiesBetweenNothingAndOneAndIsTheSameForBothOutcomes() {
        IntStream.rangeClosed(0, 100).mapToDouble(i -> i / 100.0).forEach(p -> {
            assertThat(QuadraticRule.score(p, true)).isBetween(0.0, 1.0);
            assertThat(QuadraticRule.score(p, true)).isCloseTo(QuadraticRule.score(1 - p, false), within(1e-12));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 10, 35, 50, 70, 100})
    void sayingWhatOneBelievesScoresBestOnAverage(int believed) {
        double q = believed / 100.0;
        int best = IntStream.rangeClosed(0, 100)
                .boxed()
                .max(java.util.Comparator.comparingDouble(said -> q * QuadraticRule.score(said / 100.0, true)
                        + (1 - q) * QuadraticRule.score(said / 100.0, false)))
                .orElseThrow();

        assertThat(best).isEqualTo(believed);
    }
}

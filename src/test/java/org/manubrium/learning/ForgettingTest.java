package org.manubrium.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against numbers computed in R 4.2.2 from the published formulae by a script that shares nothing with this code. */
class ForgettingTest {
    private static final double CLOSED_FORM = 1e-9;
    private static final double EIGHT_DIGITS = 1e-7;
    private static final Forgetting ALL_TIME = new Forgetting(0.177, 0.217, -0.704, 0.255, 1);

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ", -1)).map(Double::valueOf).toList();
    }

    @ParameterizedTest(name = "{0} after {2} s")
    @CsvFileSource(resources = "/forgetting/pavlik_anderson.csv", numLinesToSkip = 1)
    void strengthAndRecallAreAsInR(
            String schedule,
            String times,
            double delay,
            String decays,
            double m,
            double p,
            String decaysH,
            double mh,
            double ph) {
        List<Double> met = numbers(times);
        double now = met.get(met.size() - 1) + delay;

        assertThat(ALL_TIME.strength(met, now)).isCloseTo(m, within(CLOSED_FORM));
        assertThat(ALL_TIME.recall(met, now)).isCloseTo(p, within(CLOSED_FORM));
        assertThat(Forgetting.USUAL.strength(met, now)).isCloseTo(mh, within(CLOSED_FORM));
        assertThat(Forgetting.USUAL.recall(met, now)).isCloseTo(ph, within(CLOSED_FORM));
        assertThat(ALL_TIME.decays(met))
                .zipSatisfy(numbers(decays), (is, r) -> assertThat(is).isCloseTo(r, within(EIGHT_DIGITS)));
        assertThat(Forgetting.USUAL.decays(met))
                .zipSatisfy(numbers(decaysH), (is, r) -> assertThat(is).isCloseTo(r, within(EIGHT_DIGITS)));
    }

    /** Cepeda and others 2008, recalled: what is spaced out is kept longer than what is massed. */
    @Test
    void spacedMeetingsAreRememberedLongerThanMassedOnes() {
        double month = 30 * 86_400.0;
        assertThat(Forgetting.USUAL.recall(List.of(0.0, 86_400.0, 345_600.0), 345_600 + month))
                .isGreaterThan(Forgetting.USUAL.recall(List.of(0.0, 60.0, 120.0), 120 + month));
    }

    @Test
    void clockThatWasSetBackDoesNotBreakIt() {
        assertThat(Forgetting.USUAL.recall(List.of(100.0), 40)).isBetween(0.5, 1.0);
    }
}

package org.manubrium.reasoning.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Examples whose chance afterwards is printed in the source. Where and how it is printed stands in the row; what a row is
 * within is the rounding of what was printed.
 */
class WorkedExamplesTest {
    @ParameterizedTest(name = "{0}: {6}")
    @CsvFileSource(resources = "worked-examples.csv", numLinesToSkip = 1)
    void publishedRatiosGiveThePrintedChanceAfterwards(
            String finding,
            String disease,
            double before,
            @Nullable Double ratio,
            @Nullable Double sensitivity,
            @Nullable Double specificity,
            double after,
            double within) {
        double factor = sensitivity != null && specificity != null
                ? Odds.positive(sensitivity, specificity)
                : Objects.requireNonNull(ratio);

        assertThat(Odds.after(before, factor)).as(finding + " for " + disease).isEqualTo(after, within(within));
    }
}

package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OnsetTest {
    @ParameterizedTest
    @CsvSource({
        "6 weeks,42",
        "1 week,7",
        "3 hours,0.125",
        "1 day,1",
        "2.5 days,2.5",
        "90 minutes,0.0625",
        "2 years,730.5",
        "now,0",
        "acute,0.25",
        "weeks,42",
        "old,1826"
    })
    void timesAreReadInDays(String words, double days) {
        assertThat(Onset.parse(words).orElseThrow().days()).isCloseTo(days, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "soon", "6", "weeks 6", "-1 days", "6 fortnights", "1e3 days", "about 6 weeks"})
    void otherWordsAreNoTime(String words) {
        assertThat(Onset.parse(words)).isEmpty();
    }

    @Test
    void theWordsAreKeptInLowerCaseAndTrimmed() {
        assertThat(Onset.parse("  6 Weeks ").orElseThrow()).hasToString("6 weeks");
    }

    @Test
    void laterWordsMeanMoreDays() {
        assertThat(java.util.stream.Stream.of("now", "hours", "days", "weeks", "months", "years")
                        .map(w -> Onset.parse(w).orElseThrow().days())
                        .toList())
                .isSorted()
                .doesNotHaveDuplicates();
    }
}

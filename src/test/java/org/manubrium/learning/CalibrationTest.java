package org.manubrium.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.manubrium.learning.Calibration.Judgement;
import org.manubrium.learning.Calibration.Step;

/** Against numbers from R 4.2.2, by a script that shares nothing with this code; the first sample is small enough for a hand. */
class CalibrationTest {
    private static final Offset<Double> CLOSED_FORM = within(1e-9);

    private static Calibration of(String file) throws IOException {
        try (var in = CalibrationTest.class.getResourceAsStream("/calibration/" + file)) {
            List<Judgement> judgements = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .map(row -> new Judgement(Double.parseDouble(row[0]), row[1].equals("1")))
                    .toList();
            return Calibration.of(judgements);
        }
    }

    @Test
    void tenJudgementsAreSplitAsByHand() throws IOException {
        Calibration found = of("by_hand.csv");

        assertThat(found.brier()).isCloseTo(0.17, CLOSED_FORM);
        assertThat(found.reliability()).isCloseTo(0.02, CLOSED_FORM);
        assertThat(found.resolution()).isCloseTo(0.1, CLOSED_FORM);
        assertThat(found.uncertainty()).isCloseTo(0.25, CLOSED_FORM);
        assertThat(found.over()).isCloseTo(0, CLOSED_FORM);
    }

    @Test
    void sampleIsAsInR() throws IOException {
        Calibration found = of("sample.csv");

        assertThat(found.n()).isEqualTo(240);
        assertThat(found.brier()).isCloseTo(0.24220833333, CLOSED_FORM);
        assertThat(found.reliability()).isCloseTo(0.020959107916, CLOSED_FORM);
        assertThat(found.resolution()).isCloseTo(0.0098445245825, CLOSED_FORM);
        assertThat(found.over()).isCloseTo(0.10041666667, CLOSED_FORM);
        Step seventy = found.steps().get(2);
        assertThat(seventy.n()).isEqualTo(64);
        assertThat(seventy.share()).isCloseTo(0.609375, CLOSED_FORM);
        assertThat(seventy.low()).isCloseTo(0.4869191788, CLOSED_FORM);
        assertThat(seventy.high()).isCloseTo(0.71944430812, CLOSED_FORM);
    }

    @Test
    void nothingCannotBeCalibrated() {
        assertThatThrownBy(() -> Calibration.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}

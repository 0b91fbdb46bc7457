package org.manubrium.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.exchange.Csv.Cell;

class CsvTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "=HYPERLINK(\"x\",\"y\")"})
    void textThatLooksLikeAFormulaGetsAnApostrophe(String text) {
        assertThat(read(new Csv("a").row(Cell.of(text))).get(1)).containsExactly("'" + text);
    }

    @Test
    void numbersStandBareWithADot() {
        Csv csv = new Csv("a", "b", "c", "d").row(Cell.of(66.666, 2), Cell.of(100.0, 2), Cell.of(-3L), Cell.of(0.0, 4));

        assertThat(csv.text()).isEqualTo("a,b,c,d\r\n66.67,100,-3,0\r\n");
    }

    @Test
    void commasQuotesAndLinesSurvive() {
        Csv csv = new Csv("a", "b").row(Cell.of("C6, C7"), Cell.of("said \"no\"\r\nthen yes"));

        assertThat(csv.text()).isEqualTo("a,b\r\n\"C6, C7\",\"said \"\"no\"\"\r\nthen yes\"\r\n");
        assertThat(read(csv).get(1)).containsExactly("C6, C7", "said \"no\"\r\nthen yes");
    }

    @Test
    void rowOfAnotherWidthIsRefused() {
        assertThatThrownBy(() -> new Csv("a", "b").row(Cell.of("x"))).hasMessageContaining("1 cells under 2 columns");
    }

    private static List<List<String>> read(Csv csv) {
        return CsvReader.builder().ofCsvRecord(csv.text()).stream()
                .map(found -> List.copyOf(found.getFields()))
                .toList();
    }
}

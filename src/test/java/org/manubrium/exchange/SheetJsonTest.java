package org.manubrium.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.key.Origin;

class SheetJsonTest {
    private static final Origin ORIGIN = new Origin("msd-reflexes", "from-memory");
    private static final MarkSheet SHEET = new MarkSheet(
            "a-case",
            "alder",
            66.666666,
            List.of(new Domain(
                    DomainName.READING,
                    33.333333,
                    30,
                    List.of(new Line(
                            "reading/x", DomainName.READING, "Read: x", "2", "1", 1 / 3.0, "One off.", ORIGIN)))),
            List.of(new Harm("no-consent", "No consent.", ORIGIN)),
            List.of("a note"));

    @Test
    void theShapeIsTheOneDocumented() throws Exception {
        JsonNode read = new ObjectMapper().readTree(SheetJson.write(SHEET));

        assertThat(read.path("total").doubleValue()).isEqualTo(66.67);
        assertThat(read.path("domains").path("reading").doubleValue()).isEqualTo(33.33);
        JsonNode line = read.path("lines").get(0);
        assertThat(line.path("asked").textValue()).isEqualTo("Read: x");
        assertThat(line.path("done").textValue()).isEqualTo("2");
        assertThat(line.path("key").textValue()).isEqualTo("1");
        assertThat(line.path("credit").doubleValue()).isEqualTo(0.3333);
        assertThat(line.path("why").textValue()).isEqualTo("One off.");
        assertThat(line.path("source").textValue()).isEqualTo("msd-reflexes");
        assertThat(line.path("unverified").booleanValue()).isTrue();
        assertThat(read.path("harms").get(0).path("text").textValue()).isEqualTo("No consent.");
        assertThat(read.path("notes").get(0).textValue()).isEqualTo("a note");
    }

    @Test
    void whatIsNoKeyIsRefused() {
        assertThatThrownBy(() -> KeyJson.read("{\"caseId\":\"x\"}"))
                .isInstanceOf(BadRecord.class)
                .hasMessageStartingWith("key: expected a compiled key");
    }
}

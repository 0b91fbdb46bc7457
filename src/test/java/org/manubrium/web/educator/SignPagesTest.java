package org.manubrium.web.educator;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;
import org.manubrium.tables.Tables;

class SignPagesTest {
    private static TestServer server;
    private static TestBrowser educator;

    @BeforeAll
    static void open() {
        server = TestServer.start();
        educator = server.signInAs(Role.EDUCATOR);
    }

    @AfterAll
    static void close() {
        server.close();
    }

    @Test
    void theListLeadsToEveryManoeuvre() {
        String page = educator.page("/educator/signs").body();

        Tables.shipped()
                .examination()
                .manoeuvres()
                .forEach(m -> assertThat(page).contains("href=\"/educator/signs/" + m.id() + "\""));
    }

    @Test
    void aSignStandsBesideItsRange() {
        String page = educator.page("/educator/signs/ankle-reflex?with=root-compression%7CS1&side=left")
                .body();

        assertThat(page).contains("In health", "With what ails them", "reads: 0, absent", "not normal");
    }

    /** Complete loss of the first sacral root abolishes the ankle reflex of its side (common practice, no source). */
    @Test
    void whatIsDrawnIsWhatTheChosenPatientShows() throws JsonProcessingException {
        String json = educator.json("/educator/signs/ankle-reflex?with=root-compression%7CS1&side=left")
                .body();
        JsonNode sign = new ObjectMapper().readTree(json);

        assertThat(peak(sign.path("health"), "left")).isGreaterThan(5);
        assertThat(peak(sign.path("now"), "left")).isZero();
        assertThat(peak(sign.path("now"), "right")).isEqualTo(peak(sign.path("health"), "right"));
    }

    /** Common practice, no source: where a murmur is loudest is found by comparing one area with another. */
    @Test
    void everyAreaCanBeComparedUnlessOneWasChosen() throws JsonProcessingException {
        String sign = "/educator/signs/murmur-loudest?with=aortic-stenosis";
        JsonNode all = new ObjectMapper().readTree(educator.json(sign).body());
        JsonNode one = new ObjectMapper()
                .readTree(educator.json(sign + "&how-heart-area=aortic").body());

        assertThat(all.path("now").findValuesAsText("heart-area"))
                .hasSize(5)
                .doesNotHaveDuplicates()
                .isEqualTo(all.path("health").findValuesAsText("heart-area"));
        assertThat(one.path("now").findValuesAsText("heart-area")).containsExactly("aortic");
    }

    private static double peak(JsonNode probes, String side) {
        double peak = 0;
        for (JsonNode probe : probes) {
            if (probe.path("side").asText().equals(side)) {
                for (JsonNode sample :
                        probe.path("shown").path("curves").path(0).path("samples")) {
                    peak = Math.max(peak, sample.asDouble());
                }
            }
        }
        return peak;
    }

    @ParameterizedTest
    @CsvSource({
        "no-such-sign, 404, There is no such manoeuvre",
        "ankle-reflex?with=gout-of-the-ear, 400, gout-of-the-ear",
        "ankle-reflex?with=root-compression%7CX9, 400, X9",
        "ankle-reflex?side=upwards, 400, upwards",
        "ankle-reflex?severity=900, 400, from 0 to 100",
        "ankle-reflex?age=7, 400, from 18 to 110",
        "ankle-reflex?onset=soon, 400, soon",
        "ankle-reflex?how-reinforcement=shouting, 400, shouting"
    })
    void whatCannotBeShownIsAnsweredPlainly(String address, int status, String said) {
        HttpResponse<String> answer = educator.page("/educator/signs/" + address);

        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.body()).contains(said);
    }
}

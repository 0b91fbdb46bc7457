package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.Trials.caseWith;
import static org.manubrium.Trials.send;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.security.Role;

/** The encounter on the wire. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BedsideTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TRICEPS = "\"manoeuvre\":\"triceps-reflex\",\"side\":\"left\",\"place\":\"\"";
    private static final String PROBE = "{\"type\":\"probed\"," + TRICEPS + ",\"technique\":{}}";
    private static final String HAND_IN = "{\"type\":\"handed-in\"}";

    private TestServer server;
    private TestBrowser student;

    @BeforeAll
    void start() {
        server = TestServer.start();
        student = server.signInAs(Role.EDUCATOR, Role.STUDENT);
    }

    @AfterAll
    void stop() {
        server.close();
    }

    private String attempt() {
        return Trials.open(student, caseWith("root C7 left"));
    }

    private JsonNode encounter(String attempt) {
        return tree(student.json(attempt).body());
    }

    private static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new AssertionError(json, e);
        }
    }

    @Test
    void everyKindOfEventIsStoredAndGivenBackInOrder() {
        String attempt = attempt();
        List<String> events = List.of(
                "{\"type\":\"asked\",\"question\":\"consent\"}",
                "{\"type\":\"moved\",\"position\":\"legs-over-edge\"}",
                PROBE,
                "{\"type\":\"recorded\"," + TRICEPS + ",\"reading\":{\"grade\":\"1\",\"scale\":\"ninds-reflex\"}}",
                "{\"type\":\"answered\"," + TRICEPS + ",\"question\":\"roots\",\"answer\":[\"C7\"]}");

        IntStream.range(0, events.size())
                .forEach(i -> assertThat(
                                send(student, attempt, "k" + i, events.get(i)).statusCode())
                        .isEqualTo(200));

        JsonNode read = encounter(attempt).path("events");
        assertThat(read.findValuesAsText("type")).containsExactly("asked", "moved", "probed", "recorded", "answered");
        assertThat(read.findValuesAsText("seq")).containsExactly("1", "2", "3", "4", "5");
    }

    @Test
    void theClockCountsMovesQuestionsAndManoeuvresFromTheTables() {
        String attempt = attempt();
        send(student, attempt, "a", "{\"type\":\"asked\",\"question\":\"consent\"}");

        JsonNode answer = tree(send(student, attempt, "b", PROBE).body());

        assertThat(answer.path("clock").path("bedside").asInt()).isEqualTo(20 + 12);
        assertThat(answer.path("clock").path("position").asText()).isEqualTo("lying-45");
    }

    @Test
    void theSameKeyIsAnsweredTheSameAndAddsNothing() {
        String attempt = attempt();
        String first = send(student, attempt, "twice", PROBE).body();

        assertThat(send(student, attempt, "twice", PROBE).body()).isEqualTo(first);
        assertThat(encounter(attempt).path("events")).hasSize(1);
    }

    @Test
    void whatWasShownIsStoredToTheLetter() {
        String attempt = attempt();
        JsonNode answer = tree(send(student, attempt, "a", PROBE).body());

        assertThat(encounter(attempt).path("events").get(0).path("shown")).isEqualTo(answer.path("shown"));
    }

    @Test
    void aManoeuvreInTheWrongPositionIsRefusedWithWhereItCanBeDone() {
        String attempt = attempt();
        send(student, attempt, "a", "{\"type\":\"moved\",\"position\":\"standing\"}");

        HttpResponse<String> refused = send(student, attempt, "b", PROBE);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Move the patient first", "legs over the edge");
        assertThat(encounter(attempt).path("events")).hasSize(1);
    }

    @Test
    void whatIsUnknownIsRefusedByName() {
        String attempt = attempt();

        assertThat(send(student, attempt, "a", PROBE.replace("triceps", "tricepz")))
                .satisfies(answer -> {
                    assertThat(answer.statusCode()).isEqualTo(422);
                    assertThat(answer.body()).contains("tricepz-reflex");
                });
        assertThat(send(student, attempt, "b", PROBE.replace("technique", "techniqe")))
                .satisfies(answer -> {
                    assertThat(answer.statusCode()).isEqualTo(400);
                    assertThat(answer.body()).contains("techniqe");
                });
        assertThat(encounter(attempt).path("events")).isEmpty();
    }

    @Test
    void anotherStudentsAttemptIsNotThere() {
        String attempt = attempt();
        TestBrowser other = server.signInAs(Role.STUDENT);

        assertThat(other.json(attempt).statusCode()).isEqualTo(404);
        assertThat(send(other, attempt, "a", PROBE).statusCode()).isEqualTo(404);
        assertThat(other.page(attempt + "/debrief").statusCode()).isEqualTo(404);
        assertThat(encounter(attempt).path("events")).isEmpty();
    }

    @Test
    void aSecondHandInIsRefusedAndTheFirstIsAnsweredAgain() {
        String attempt = attempt();
        String first = send(student, attempt, "in", HAND_IN).body();

        assertThat(send(student, attempt, "again", HAND_IN).statusCode()).isEqualTo(409);
        assertThat(send(student, attempt, "late", PROBE).statusCode()).isEqualTo(409);
        assertThat(send(student, attempt, "in", HAND_IN).body()).isEqualTo(first);
        assertThat(encounter(attempt).path("events")).hasSize(1);
    }

    @Test
    void theDebriefComesWithTheHandInAndNotBefore() {
        String attempt = attempt();
        assertThat(student.page(attempt + "/debrief").statusCode()).isEqualTo(404);

        send(student, attempt, "in", HAND_IN);

        assertThat(student.page(attempt + "/debrief").body()).contains("Debrief", "0 %");
    }

    @Test
    void aStaleFormIsRefused() {
        String attempt = attempt();
        HttpResponse<String> refused = student.send(student.request(attempt + "/events")
                .header("Content-Type", "application/json")
                .header("X-CSRF-Token", "stale")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString(PROBE)));

        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(encounter(attempt).path("events")).isEmpty();
    }

    @Test
    void nothingOfTheKeyIsToldBeforeTheHandIn() {
        String attempt = Trials.open(student, """
                title: A patient for a test
                patient: {age: 47, sex: female}
                conditions: [{is: root-compression, level: C7, side: left, severity: 0.8}]
                """);
        send(student, attempt, "a", PROBE);
        JsonNode read = encounter(attempt);

        assertThat(read.path("patient").toString()).doesNotContain("root", "compression", "C7");
        assertThat(read.path("events").toString()).doesNotContain("normal", "meaning", "root", "C7");
        assertThat(Map.of("clock", read.path("clock"), "attempt", read.path("attempt"))
                        .toString())
                .doesNotContain("root", "C7");
    }
}

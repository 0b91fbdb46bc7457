package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.security.Role;
import org.manubrium.store.DrillQuestion;

class DrillPagesTest {
    private static final String PATH = "/student/signs";

    private final TestServer server = TestServer.start();
    private final TestBrowser student = server.signInAs(Role.STUDENT);

    @AfterEach
    void close() {
        server.close();
    }

    private JsonNode day() {
        return TestVisit.json(student.json(PATH));
    }

    private HttpResponse<String> answer(int number, int option) {
        return student.postJson(PATH + "/" + number, "{\"option\":" + option + "}");
    }

    @Test
    void dayHasFiveSignsThatStayAsTheyAre() {
        JsonNode first = day();

        assertThat(first.path("questions")).hasSize(5);
        assertThat(day()).isEqualTo(first);
    }

    /** Neither the fact that is asked, which may name what is right, nor anything of the answer is sent before it is given. */
    @Test
    void nothingGivesTheKeyAwayBeforeTheAnswer() {
        String sent = student.json(PATH).body();
        List<DrillQuestion> kept = server.database()
                .direct(stores -> IntStream.range(1, 50)
                        .mapToObj(account ->
                                stores.drill().of(account, day().path("day").asText()))
                        .filter(of -> !of.isEmpty())
                        .findFirst()
                        .orElseThrow());

        assertThat(kept).hasSize(5).allSatisfy(question -> {
            assertThat(sent).doesNotContain(question.fact());
            assertThat(sent).doesNotContain(question.solution());
        });
        assertThat(sent).doesNotContain("\"answer\":", "\"right\":", "\"why\":");
    }

    @Test
    void answerIsExplainedWithItsSourceAndTheFirstOneStands() {
        day();
        JsonNode first = TestVisit.json(answer(1, 0));
        JsonNode again = TestVisit.json(answer(1, 1));

        assertThat(first.path("why").asText()).isNotBlank();
        assertThat(first.path("sources")).isNotEmpty();
        assertThat(again).isEqualTo(first);
        assertThat(day().path("questions").get(0).path("answer")).isEqualTo(first);
    }

    @Test
    void whatIsNoAnswerIsRefused() {
        day();

        assertThat(answer(9, 0).statusCode()).isEqualTo(422);
        assertThat(answer(1, 99).statusCode()).isEqualTo(400);
        assertThat(student.postJson(PATH + "/1", "{}").statusCode()).isEqualTo(400);
    }

    @Test
    void studentsHaveTheirOwnSigns() {
        List<String> mine = asked(day());
        List<String> others = asked(TestVisit.json(server.signInAs(Role.STUDENT).json(PATH)));

        assertThat(mine).isNotEqualTo(others);
    }

    private static List<String> asked(JsonNode day) {
        return StreamSupport.stream(day.path("questions").spliterator(), false)
                .map(question -> question.path("question").path("asked").asText())
                .toList();
    }
}

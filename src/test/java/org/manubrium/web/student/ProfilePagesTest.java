package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.store.SetCase;

/** How an attempt went, on the debrief; and the advice of one who practises. */
class ProfilePagesTest {
    private static final String CASE = TestSchool.ROOT + """
            differential:
              - {is: root-compression, level: C7, side: left}
              - {is: root-compression, level: C6, side: left}
              - {is: healthy}
            conclusion: {diagnosis: [root-compression]}
            """;

    private final TestServer server = TestServer.start();
    private final TestSchool school = new TestSchool(server);
    private final SetCase set = school.practice(CASE);

    @AfterEach
    void close() {
        server.close();
    }

    private static HttpResponse<String> advice(TestVisit visit) {
        return visit.browser()
                .send(visit.browser()
                        .request(visit.path() + "/advice")
                        .header("Accept", "application/json")
                        .header("X-CSRF-Token", visit.browser().csrf())
                        .POST(BodyPublishers.noBody()));
    }

    private static void probe(TestVisit visit, String manoeuvre) {
        visit.send("\"type\":\"probed\",\"manoeuvre\":\"" + manoeuvre
                + "\",\"side\":\"left\",\"place\":\"\",\"technique\":{}");
    }

    @Test
    void theDebriefShowsHowTheQuestionNarrowedAndTheBestOrder() {
        TestVisit visit = school.begin("ada", set);
        visit.send("\"type\":\"moved\",\"position\":\"legs-over-edge\"");
        probe(visit, "triceps-reflex");
        visit.send("\"type\":\"moved\",\"position\":\"lying-45\"");
        probe(visit, "biceps-reflex");
        visit.send("\"type\":\"handed-in\"");

        String page = visit.browser().page(visit.path() + "/debrief").body();

        assertThat(page).contains("How the question narrowed", "what promised most for its time", "<polyline");
        assertThat(page).contains("triceps reflex, left", "biceps reflex, left");
        assertThat(page.replaceAll("<[^>]+>|\\s+", " ").replaceAll(" +", " "))
                .contains("You did 2 different steps, moved the patient 2 times")
                .contains("the same steps need 0 moves");
        assertThat(page).doesNotContain(" bits", "NaN");
    }

    @Test
    void whoPractisesIsToldTheNextStepOnlyWhenAsking() {
        TestVisit visit = school.begin("ada", set);

        assertThat(visit.browser().json(visit.path() + "/advice").body()).isEqualTo("{\"offered\":true}");
        String first = advice(visit).body();
        assertThat(first).contains("\"next\":\"").contains("left").doesNotContain("root", "C7,", "chance");
        assertThat(visit.events()).isEmpty();
    }

    @Test
    void aStationGivesNoAdvice() {
        SetCase station = school.set(set.caseVersionId(), SetCase.Mode.STATION);
        TestVisit sat = TestVisit.begin(school.begin("bram", set).browser(), station);

        assertThat(sat.browser().json(sat.path() + "/advice").body()).isEqualTo("{\"offered\":false}");
        assertThat(advice(sat).statusCode()).isEqualTo(409);
        assertThat(advice(sat).body()).doesNotContain("reflex", "power");
    }

    @Test
    void anotherStudentsAttemptGivesNoAdvice() {
        TestVisit visit = school.begin("ada", set);
        TestVisit other = TestVisit.of(school.begin("bram", set).browser(), visit.path());

        assertThat(other.browser().json(visit.path() + "/advice").body()).isEqualTo("{\"offered\":false}");
        assertThat(advice(other).statusCode()).isEqualTo(409);
    }
}

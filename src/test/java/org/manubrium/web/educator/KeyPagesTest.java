package org.manubrium.web.educator;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.security.Role;
import org.manubrium.store.Remarking;
import org.manubrium.store.SetCase;

class KeyPagesTest {
    private static final String TAUGHT = "\"type\":\"answered\",\"manoeuvre\":\"\",\"side\":\"none\",\"place\":\"\","
            + "\"question\":\"site\",\"answer\":[\"root T1 right\"]";

    private final TestServer server = TestServer.start();
    private final TestSchool school = new TestSchool(server);
    private final SetCase set = school.practice(TestSchool.ROOT);
    private final TestBrowser educator = server.signInAs(Role.EDUCATOR);
    private final String key = "/educator/versions/" + set.caseVersionId() + "/key";
    private final TestVisit visit = school.begin("ada", set);

    @AfterEach
    void close() {
        server.close();
    }

    private HttpResponse<String> correct(String line, String to, String reason) {
        return educator.post(key + "/correct", Map.of("line", line, "to", to, "reason", reason, "everywhere", "on"));
    }

    private void await() throws InterruptedException {
        for (int i = 0; i < 200 && !rounds().stream().allMatch(Remarking::isFinished); i++) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        assertThat(rounds()).isNotEmpty().allMatch(Remarking::isFinished);
    }

    private List<Remarking> rounds() {
        return server.database().direct(stores -> stores.remarkings().of(set.caseVersionId()));
    }

    @Test
    void correctedLineMarksWhatWasHandedInAgainAndTheStudentSeesWhy() throws InterruptedException {
        visit.send(TAUGHT);
        visit.send("\"type\":\"handed-in\"");
        HttpResponse<String> answer = correct("conclusion/site", "root T1 right", "Both are taught here.");
        await();

        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        assertThat(visit.browser().page(visit.path() + "/debrief").body())
                .contains("This mark has changed", "Both are taught here.");
        assertThat(visit.browser().page("/student").body()).contains("marked again; it was 0 %");
        assertThat(educator.page(key).body()).contains("finished", "Both are taught here.");
    }

    @Test
    void correctionThatWillNotDoIsRefusedWithASentence() {
        assertThat(correct("conclusion/price", "3", "why").statusCode()).isEqualTo(422);
        assertThat(correct("conclusion/next", "mri-spine", " ").body()).contains("Say why");
        assertThat(educator.post(key + "/compile", Map.of("reason", "tables")).body())
                .contains("nothing would change");
        assertThat(rounds()).isEmpty();
    }

    @Test
    void whatIsRefusedStandsInItsFieldsAgain() {
        assertThat(correct("normal/triceps-reflex:left", "perhaps", "A slip of the pen.")
                        .body())
                .contains("Write normal or abnormal", "value=\"perhaps\"", "value=\"A slip of the pen.\"");
    }

    @Test
    void anotherConventionMarksWhatTheCohortHandedInAgain() throws InterruptedException {
        visit.send("\"type\":\"handed-in\"");
        List<String> conventions = TestSchool.REFERENCE.marking().conventions().ids();
        educator.post(
                "/educator/cohorts/" + set.cohortId(),
                Map.of("name", "Autumn", "convention", conventions.get(1), "pseudonyms", "on"));
        await();

        assertThat(visit.browser().page(visit.path() + "/debrief").body())
                .contains("This mark has changed", "The cohort is marked under the convention");
    }

    @Test
    void otherWeightsMarkWhatWasHandedInAgain() throws InterruptedException {
        visit.send(TAUGHT);
        visit.send("\"type\":\"handed-in\"");
        String weights = "/educator/cohorts/" + set.cohortId() + "/work/" + set.id() + "/weights";
        assertThat(educator.page(weights).body()).contains("value=\"30\"", "Take care.");
        int same = educator.post(weights, weights("20", "30")).statusCode();
        HttpResponse<String> none = educator.post(weights, weights("much", "30"));
        int other = educator.post(weights, weights("10", "40")).statusCode();
        await();

        assertThat(List.of(same, none.statusCode(), other)).containsExactly(422, 422, 303);
        assertThat(none.body()).contains("Under “essential” stands “much”");
        assertThat(rounds())
                .hasSize(1)
                .allSatisfy(round -> assertThat(round.changed()).isEqualTo(1));
        assertThat(visit.browser().page(visit.path() + "/debrief").body()).contains("weighed 10 40 25 25 now");
    }

    private static Map<String, String> weights(String essential, String reading) {
        return Map.of("essential", essential, "reading", reading, "interpretation", "25", "conclusion", "25");
    }

    @Test
    void pageOfSurenessSaysHowManyJudgementsAreMissing() {
        assertThat(visit.browser().page("/student/sureness").body()).contains("fewer would say nothing");
    }

    @Test
    void studentsDoNotReachTheKey() {
        assertThat(visit.browser().page(key).statusCode()).isEqualTo(403);
    }
}

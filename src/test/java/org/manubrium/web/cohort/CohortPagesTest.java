package org.manubrium.web.cohort;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;
import org.manubrium.store.Cohort;
import org.manubrium.store.Enrolment;

class CohortPagesTest {
    private static final Pattern LINK =
            Pattern.compile("http://127\\.0\\.0\\.1:\\d+(/(?:welcome|join)/[A-Za-z0-9_-]{43})");
    private static final String CONVENTION = "convention";

    private final TestServer server = TestServer.start();
    private final TestBrowser educator = server.signInAs(Role.EDUCATOR);
    private String cohort = "";

    @BeforeEach
    void makeCohort() {
        cohort = at(educator.post("/educator/cohorts", Map.of("name", "Autumn block", CONVENTION, convention())));
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void newCohortHasItsLeaderboardOffAndPseudonymsOn() {
        Cohort made = cohorts().get(0);

        assertThat(made.name()).isEqualTo("Autumn block");
        assertThat(made.leaderboardOn()).isFalse();
        assertThat(made.pseudonyms()).isTrue();
        assertThat(educator.page(cohort).body()).contains("Autumn block", "Nobody is in this cohort yet");
    }

    @Test
    void blankAndTakenNamesAreRefusedBesideTheField() {
        HttpResponse<String> blank = educator.post("/educator/cohorts", Map.of("name", " ", CONVENTION, convention()));
        HttpResponse<String> taken =
                educator.post("/educator/cohorts", Map.of("name", "autumn BLOCK", CONVENTION, convention()));

        assertThat(blank.statusCode()).isEqualTo(422);
        assertThat(blank.body()).contains("id=\"name-fault\"", "Give the cohort a name");
        assertThat(taken.statusCode()).isEqualTo(422);
        assertThat(taken.body()).contains("There is a cohort of this name already.", "value=\"autumn BLOCK\"");
        assertThat(cohorts()).hasSize(1);
    }

    @Test
    void unknownConventionIsRefused() {
        HttpResponse<String> answer = educator.post("/educator/cohorts", Map.of("name", "Spring", CONVENTION, "none"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"convention-fault\"");
    }

    @Test
    void pastedNamesBecomeStudentsWithALinkEach() {
        HttpResponse<String> answer = paste("Ada Fenn\r\n\r\n  Bram   Holt \nÇağla Öz\n");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(links(answer)).hasSize(3).doesNotHaveDuplicates();
        assertThat(answer.body()).contains("ada.fenn", "bram.holt", "cagla.oz");
        assertThat(roster()).extracting(Enrolment::displayName).containsExactly("Ada Fenn", "Bram Holt", "Çağla Öz");
        assertThat(roster()).extracting(Enrolment::pseudonym).doesNotHaveDuplicates();
        assertThat(roster()).allSatisfy(place -> assertThat(place.pseudonym()).matches("[A-Z][a-z]+ \\d{2,3}"));
    }

    @Test
    void linkSetsThePasswordOnceAndLetsTheStudentIn() {
        String link = links(paste("Ada Fenn")).get(0);
        TestBrowser ada = server.browser();

        assertThat(ada.page(link).body()).contains("Welcome, Ada Fenn");
        assertThat(ada.post(link, Map.of("wanted", "short")).statusCode()).isEqualTo(422);
        assertThat(ada.post(link, Map.of("wanted", TestServer.PASSWORD)).statusCode())
                .isEqualTo(303);
        assertThat(ada.page("/student").statusCode()).isEqualTo(200);
        assertThat(server.browser().page(link).statusCode()).isEqualTo(404);
        assertThat(server.signInAs("ada.fenn").page("/student").statusCode()).isEqualTo(200);
    }

    @Test
    void duplicatesAndLongLinesAreNamedAndNobodyIsAdded() {
        paste("Ada Fenn");
        HttpResponse<String> answer = paste("Bram Holt\nada fenn\n\nBRAM HOLT\n" + "x".repeat(101) + "\n123");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("line 2", "This name is in the cohort already.")
                .contains("line 4", "This name is on line 1 too.")
                .contains("line 5", "A name may have at most 100 characters.")
                .contains("line 6", "There is no letter in it.");
        assertThat(answer.body()).contains("Bram Holt\nada fenn\n\nBRAM HOLT");
        assertThat(roster()).hasSize(1);
    }

    @Test
    void emptyListIsRefused() {
        assertThat(paste("\n \n").statusCode()).isEqualTo(422);
    }

    @Test
    void markupInNamesIsShownAsText() {
        HttpResponse<String> answer = paste("<script>alert(1)</script>");

        assertThat(answer.body()).contains("&lt;script&gt;").doesNotContain("<script>alert");
        assertThat(educator.page(cohort).body()).contains("&lt;script&gt;").doesNotContain("<script>alert");
    }

    @Test
    void sendingTheListAgainAddsNobody() {
        paste("Ada Fenn\nBram Holt");

        assertThat(paste("Ada Fenn\nBram Holt").statusCode()).isEqualTo(422);
        assertThat(roster()).hasSize(2);
    }

    @Test
    void newLinkEndsTheOneBefore() {
        String first = links(paste("Ada Fenn")).get(0);
        String second = links(
                        educator.post(cohort + "/students/" + roster().get(0).accountId() + "/link", Map.of()))
                .get(0);

        assertThat(server.browser().page(first).statusCode()).isEqualTo(404);
        assertThat(server.browser().page(second).statusCode()).isEqualTo(200);
    }

    @Test
    void noLinkOpensAnEducatorsAccount() {
        String invitation =
                links(educator.post(cohort + "/invitation", Map.of())).get(0);
        TestBrowser both = server.signInAs(Role.STUDENT, Role.EDUCATOR);
        both.post(invitation, Map.of());

        HttpResponse<String> answer =
                educator.post(cohort + "/students/" + roster().get(0).accountId() + "/link", Map.of());

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(links(answer)).isEmpty();
    }

    @Test
    void invitationLetsAStudentJoinOnce() {
        String invitation =
                links(educator.post(cohort + "/invitation", Map.of())).get(0);
        TestBrowser student = server.signInAs(Role.STUDENT);

        assertThat(student.page(invitation).body()).contains("Join Autumn block");
        assertThat(student.post(invitation, Map.of()).statusCode()).isEqualTo(303);
        assertThat(student.post(invitation, Map.of()).statusCode()).isEqualTo(303);
        assertThat(roster()).hasSize(1);
    }

    @Test
    void invitationMakesAnAccountForSomebodyNew() {
        String invitation =
                links(educator.post(cohort + "/invitation", Map.of())).get(0);
        TestBrowser somebody = server.browser();
        Map<String, String> form =
                Map.of("name", "cleo", "display-name", "Cleo Marsh", "password", TestServer.PASSWORD);

        assertThat(somebody.post(invitation, form).statusCode()).isEqualTo(303);
        assertThat(somebody.page("/student").statusCode()).isEqualTo(200);
        assertThat(somebody.page("/educator").statusCode()).isEqualTo(403);
        assertThat(roster()).extracting(Enrolment::displayName).containsExactly("Cleo Marsh");
        HttpResponse<String> taken = server.browser().post(invitation, form);
        assertThat(taken.statusCode()).isEqualTo(422);
        assertThat(taken.body()).contains("is taken", "value=\"cleo\"");
        assertThat(roster()).hasSize(1);
    }

    @Test
    void endedInvitationOpensNothing() {
        String invitation =
                links(educator.post(cohort + "/invitation", Map.of())).get(0);
        educator.post(cohort + "/invitation/end", Map.of());
        TestBrowser student = server.signInAs(Role.STUDENT);

        assertThat(student.page(invitation).statusCode()).isEqualTo(404);
        assertThat(student.post(invitation, Map.of()).statusCode()).isEqualTo(404);
        assertThat(roster()).isEmpty();
    }

    @Test
    void settingsAreKept() {
        educator.post(cohort, Map.of("name", "Winter", CONVENTION, convention(), "leaderboard", "on"));

        Cohort changed = cohorts().get(0);
        assertThat(changed.name()).isEqualTo("Winter");
        assertThat(changed.leaderboardOn()).isTrue();
        assertThat(changed.pseudonyms()).isFalse();
    }

    @Test
    void missingCohortHasNoPage() {
        assertThat(educator.page("/educator/cohorts/999").statusCode()).isEqualTo(404);
        assertThat(educator.page("/educator/cohorts/none").statusCode()).isEqualTo(404);
    }

    private String convention() {
        Matcher option = Pattern.compile("<option value=\"([^\"]+)\"")
                .matcher(educator.page("/educator/cohorts").body());
        assertThat(option.find()).isTrue();
        return option.group(1);
    }

    private HttpResponse<String> paste(String names) {
        return educator.post(cohort + "/roster", Map.of("names", names));
    }

    private List<Cohort> cohorts() {
        return server.database().direct(stores -> stores.cohorts().all());
    }

    private List<Enrolment> roster() {
        return server.database()
                .direct(stores -> stores.cohorts().roster(cohorts().get(0).id()));
    }

    private static List<String> links(HttpResponse<String> answer) {
        return LINK.matcher(answer.body())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private static String at(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("\\?.*", "");
    }
}

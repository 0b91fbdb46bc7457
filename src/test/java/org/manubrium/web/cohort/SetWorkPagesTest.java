package org.manubrium.web.cohort;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Cohort;
import org.manubrium.store.NewCaseVersion;
import org.manubrium.store.SetCase;

class SetWorkPagesTest {
    private final TestServer server = TestServer.start();
    private final TestBrowser educator = server.signInAs(Role.EDUCATOR);
    private final CaseVersion version = server.database()
            .inTransaction(stores -> stores.cases()
                    .publish(new NewCaseVersion(
                            stores.cases().named("elbow", "A weak elbow").id(),
                            "title: A weak elbow",
                            "{}",
                            "hash",
                            Optional.empty(),
                            Instant.now())));
    private final Cohort cohort = server.database()
            .inTransaction(stores -> stores.cohorts().add("Autumn", "any", Optional.empty(), Instant.now()));
    private final String page = "/educator/cohorts/" + cohort.id();

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void caseIsSetWithItsDatesAndMode() {
        HttpResponse<String> answer = set(Map.of("mode", "STATION"));

        assertThat(answer.statusCode()).isEqualTo(303);
        SetCase set = all().get(0);
        assertThat(set.mode()).isEqualTo(SetCase.Mode.STATION);
        assertThat(set.caseVersionId()).isEqualTo(version.id());
        assertThat(educator.page(page + "?done=set").body())
                .contains("The case has been set.", "3 Feb 2031, 09:00", "17 Feb 2031, 17:30", "not yet open");
    }

    @Test
    void closingBeforeOpeningIsRefusedAndWhatWasWrittenIsKept() {
        HttpResponse<String> answer = set(Map.of("closes", "2031-02-03T08:59"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("It must close after it opens.", "value=\"2031-02-03T08:59\"");
        assertThat(all()).isEmpty();
    }

    @Test
    void unreadableTimesAndUnknownCasesAreRefusedBesideTheirFields() {
        HttpResponse<String> answer = set(Map.of("opens", "soon", "version", "x"));
        HttpResponse<String> unknown = set(Map.of("version", "999"));

        assertThat(answer.body()).contains("id=\"opens-fault\"", "id=\"case-fault\"");
        assertThat(unknown.body()).contains("id=\"case-fault\"");
        assertThat(all()).isEmpty();
    }

    @Test
    void setCaseCanBeTakenBackUntilSomebodyHasBegunIt() {
        set(Map.of());
        set(Map.of());
        SetCase first = all().get(0);
        SetCase second = all().get(1);
        Account student = server.account("ada", Role.STUDENT);
        server.database()
                .inTransaction(stores ->
                        stores.attempts().start(student.id(), Optional.of(first.id()), version.id(), Instant.now()));

        assertThat(educator.post(page + "/work/" + first.id() + "/take-back", Map.of())
                        .statusCode())
                .isEqualTo(422);
        assertThat(educator.post(page + "/work/" + second.id() + "/take-back", Map.of())
                        .statusCode())
                .isEqualTo(303);
        assertThat(all()).containsExactly(first);
    }

    @Test
    void closingCanBeMoved() {
        set(Map.of());
        String closing = page + "/work/" + all().get(0).id() + "/closing";

        assertThat(educator.post(closing, Map.of("closes", "2031-02-20T12:00")).statusCode())
                .isEqualTo(303);
        assertThat(educator.page(page).body()).contains("20 Feb 2031, 12:00");
        assertThat(educator.post(closing, Map.of("closes", "2030-01-01T12:00")).statusCode())
                .isEqualTo(422);
    }

    @Test
    void setCaseOfAnotherCohortIsNotFoundHere() {
        set(Map.of());
        Cohort other = server.database()
                .inTransaction(stores -> stores.cohorts().add("Spring", "any", Optional.empty(), Instant.now()));

        assertThat(educator.post(
                                "/educator/cohorts/" + other.id() + "/work/"
                                        + all().get(0).id() + "/take-back",
                                Map.of())
                        .statusCode())
                .isEqualTo(404);
    }

    private HttpResponse<String> set(Map<String, String> changes) {
        Map<String, String> form = new HashMap<>(Map.of(
                "version", String.valueOf(version.id()),
                "opens", "2031-02-03T09:00",
                "closes", "2031-02-17T17:30",
                "mode", "PRACTICE"));
        form.putAll(changes);
        return educator.post(page + "/work", form);
    }

    private List<SetCase> all() {
        return server.database().direct(stores -> stores.setCases().of(cohort.id()));
    }
}

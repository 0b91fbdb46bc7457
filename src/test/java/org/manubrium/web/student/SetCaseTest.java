package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.security.Role;
import org.manubrium.store.SetCase;
import org.manubrium.store.StoredMark;

/** A case set to a cohort, as its students meet it. */
class SetCaseTest {
    private static final String CONSENT = "\"type\":\"asked\",\"question\":\"consent\"";
    private static final String HAND_IN = "\"type\":\"handed-in\"";

    private final TestServer server = TestServer.start();
    private final TestSchool school = new TestSchool(server);
    private final SetCase set = school.practice(TestSchool.ROOT);
    private final TestVisit visit = school.begin("ada", set);

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void firstPageLeadsToWhatIsUnderWayAndToWhatIsHandedIn() {
        assertThat(visit.browser().page("/student").body())
                .contains("Go on examining", "href=\"" + visit.path() + "\"");
        visit.send(HAND_IN);
        assertThat(visit.browser().page("/student").body())
                .contains("Examine again", "href=\"" + visit.path() + "/debrief\"");
    }

    @Test
    void emptyHandInIsMarkedZero() {
        visit.send(HAND_IN);
        long attempt = Long.parseLong(visit.path().replaceAll("\\D", ""));

        Optional<Double> total = server.database()
                .direct(stores -> stores.marks().current(attempt))
                .map(StoredMark::total);

        assertThat(total).contains(0.0);
    }

    @Test
    void manyAtOnceWithOneKeyAddOne() {
        List<String> answers = IntStream.range(0, 12)
                .parallel()
                .mapToObj(i -> visit.send("k", CONSENT).body())
                .distinct()
                .toList();

        assertThat(answers).hasSize(1);
        assertThat(visit.events()).hasSize(1);
    }

    @Test
    void anotherStudentOfTheCohortFindsNothingThere() {
        TestVisit other = TestVisit.of(school.begin("bram", set).browser(), visit.path());

        assertThat(other.send(CONSENT).statusCode()).isEqualTo(404);
        assertThat(other.browser().json(visit.path()).statusCode()).isEqualTo(404);
        assertThat(visit.events()).isEmpty();
    }

    @Test
    void closedCaseCannotBeBegunButWhatIsBegunCanBeFinished() {
        school.close(set);
        school.student("cleo");
        HttpResponse<String> late = begin(server.signInAs("cleo"), set);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("This case is closed");
        assertThat(visit.send(CONSENT).statusCode()).isEqualTo(200);
        assertThat(visit.send(HAND_IN).statusCode()).isEqualTo(200);
    }

    @Test
    void caseOfAnotherCohortCannotBeBegun() {
        server.account("dara", Role.STUDENT);

        assertThat(begin(server.signInAs("dara"), set).statusCode()).isEqualTo(409);
    }

    /** Neither page is a fault of the server, whichever of the two comes first. */
    @Test
    void caseTakenBackWhileItIsBegunIsEitherBegunOrGone() {
        TestBrowser educator = server.signInAs(Role.EDUCATOR);
        for (int round = 0; round < 8; round++) {
            SetCase other = school.set(set.caseVersionId(), SetCase.Mode.PRACTICE);
            List<Integer> codes = Stream.<Supplier<Integer>>of(
                            () -> begin(visit.browser(), other).statusCode(),
                            () -> educator.post(
                                            "/educator/cohorts/" + other.cohortId() + "/work/" + other.id()
                                                    + "/take-back",
                                            Map.of())
                                    .statusCode())
                    .parallel()
                    .map(Supplier::get)
                    .toList();

            assertThat(codes.get(0)).isIn(303, 409);
            assertThat(codes.get(1)).isIn(303, 422);
            assertThat(codes).isNotEqualTo(List.of(409, 422));
        }
    }

    @Test
    void stationIsSatOnceAndPracticeAsOftenAsOneLikes() {
        SetCase station = school.set(set.caseVersionId(), SetCase.Mode.STATION);
        assertThat(visit.browser().page("/student").body()).contains("Begin the station, once");
        TestVisit sat = TestVisit.begin(visit.browser(), station);

        assertThat(TestVisit.begin(visit.browser(), station).path()).isEqualTo(sat.path());
        sat.send(HAND_IN);
        HttpResponse<String> again = begin(visit.browser(), station);
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.body()).contains("A station is sat once.");

        visit.send(HAND_IN);
        assertThat(TestVisit.begin(visit.browser(), set).path()).isNotEqualTo(visit.path());
    }

    @Test
    void eventsAreThereAfterSigningOutAndInAgain() {
        visit.send(CONSENT);
        JsonNode before = visit.events();
        visit.browser().post("/sign-out", Map.of());
        assertThat(visit.browser().json(visit.path()).statusCode()).isEqualTo(401);

        TestVisit again = TestVisit.of(server.signInAs("ada"), visit.path());

        assertThat(before).hasSize(1);
        assertThat(again.events()).isEqualTo(before);
    }

    private static HttpResponse<String> begin(TestBrowser browser, SetCase set) {
        return browser.post("/attempts", Map.of("set", String.valueOf(set.id())));
    }
}

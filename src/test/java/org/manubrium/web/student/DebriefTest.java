package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;

/** What a debrief says beside the mark sheet. */
class DebriefTest {
    private static final String CONCLUDE = "\"type\":\"answered\",\"manoeuvre\":\"\",\"side\":\"none\",\"place\":\"\","
            + "\"question\":\"%s\",\"answer\":[\"%s\"]";

    private final TestServer server = TestServer.start();
    private final TestSchool school = new TestSchool(server);
    private final TestVisit visit = school.begin("ada", school.practice(TestSchool.ROOT + """
                    differential: [{is: root-compression, level: C7, side: left}, {is: healthy}]
                    expect: yes
                    """));

    @AfterEach
    void close() {
        server.close();
    }

    private String debriefAfter(String question, String answer) {
        visit.send(CONCLUDE.formatted(question, answer));
        visit.send("\"type\":\"handed-in\"");
        return visit.browser().page(visit.path() + "/debrief").body();
    }

    /** C6 and C7 share the triceps but not the biceps: whichever root it is, an essential sign tells (common practice). */
    @Test
    void wrongPlaceIsDrawnBesideTheTrueOneWithWhatToldThemApart() {
        assertThat(debriefAfter("site", "root C6 left"))
                .contains("Where it lay", "the lesion", "root C7 left", "What told the two places apart")
                .contains("if it lay where you said");
    }

    @Test
    void rightPlaceNeedsNothingToTellItApart() {
        assertThat(debriefAfter("site", "root C7 left"))
                .contains("Where it lay", "you said")
                .doesNotContain("What told the two places apart");
    }

    @Test
    void wordsOutsideTheTermsAreNoPlace() {
        assertThat(debriefAfter("site", "other:somewhere")).doesNotContain("What told the two places apart");
    }

    @Test
    void summaryIsKeptAndThreeThingsAreToBePractised() {
        assertThat(debriefAfter("summary", "A seventh root, I think."))
                .contains("What you would tell your senior", "A seventh root, I think.", "Three things to practise");
    }

    private void probe(String manoeuvre) {
        visit.send("\"type\":\"probed\",\"manoeuvre\":\"" + manoeuvre
                + "\",\"side\":\"left\",\"place\":\"\",\"technique\":{}");
    }

    /** A seventh root takes the triceps reflex and leaves the knee's: common practice, no source. */
    @Test
    void expectedSignsAreScoredAndStandBesideWhatWasFound() {
        visit.send(CONCLUDE.formatted("expect", "root-compression=triceps-reflex;knee-reflex"));
        probe("triceps-reflex");
        visit.send(CONCLUDE.formatted("expect", "root-compression=triceps-reflex"));
        visit.send("\"type\":\"handed-in\"");

        assertThat(visit.browser().page(visit.path() + "/debrief").body())
                .contains("Before examining you thought of nerve root compression")
                .contains("1 of 2 signs you expected of it would be there: triceps reflex.")
                .contains("It would leave as it is: knee reflex.")
                .contains("this was there of what you expected: triceps reflex.");
    }

    @Test
    void bedsideIsToldWhetherTheCaseAsksBeforehand() {
        assertThat(visit.read().path("patient").path("expect").asBoolean()).isTrue();
        assertThat(school.begin("bram", school.practice(TestSchool.ROOT.replace("heavy-arm", "other-arm")))
                        .read()
                        .path("patient")
                        .path("expect")
                        .asBoolean())
                .isFalse();
    }
}

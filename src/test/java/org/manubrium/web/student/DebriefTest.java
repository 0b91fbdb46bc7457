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
    private final TestVisit visit = school.begin("ada", school.practice(TestSchool.ROOT + "expect: yes\n"));

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

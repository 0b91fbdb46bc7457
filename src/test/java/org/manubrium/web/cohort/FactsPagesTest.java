package org.manubrium.web.cohort;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.Chromium;
import org.manubrium.TestBrowser;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.exchange.SheetReader;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.security.Role;
import org.manubrium.store.Confirmation;
import org.manubrium.store.MarkChange;
import org.manubrium.store.SetCase;
import org.manubrium.store.StoredMark;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.interactions.Actions;

/** An educator confirms the facts behind a station that nobody has checked. */
class FactsPagesTest {
    private static final String HAND_IN = "\"type\":\"handed-in\"";
    private static final String WHY = "Page 12 of the handbook we teach from.";
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final TestServer server = TestServer.start();
    private final TestSchool school = new TestSchool(server);
    private final SetCase station = school.station(TestSchool.UNCHECKED);
    private final TestBrowser educator = server.signInAs(Role.EDUCATOR);
    private final String page = "/educator/cohorts/" + station.cohortId() + "/work/" + station.id() + "/facts";

    @AfterEach
    void close() {
        server.close();
    }

    private long handedIn(String name, SetCase set) {
        TestVisit visit = school.begin(name, set);
        visit.send(HAND_IN);
        return Long.parseLong(visit.path().replaceAll("\\D", ""));
    }

    private List<StoredMark> history(long attempt) {
        return server.database().direct(stores -> stores.marks().history(attempt));
    }

    private List<Line> unscored(long attempt) {
        return SheetReader.read(history(attempt).get(0).sheet()).lines().stream()
                .filter(line -> !line.scored())
                .toList();
    }

    private void waitFor(long attempt, int marks) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (history(attempt).size() < marks && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        assertThat(history(attempt)).hasSize(marks);
    }

    private String row() {
        Matcher found = Pattern.compile("value=\"(manoeuvres/vibration#[0-9a-f]+)\"")
                .matcher(educator.page(page).body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void thePageSaysWhatIsUncheckedWithItsSourceAndWhatItMarks() {
        String body = educator.page(page).body();

        assertThat(body)
                .contains("Facts nobody has checked yet", "vibration", "Read: ", "Source: ")
                .doesNotContain("Confirmed here");
        assertThat(educator.page("/educator/cohorts/" + station.cohortId()).body())
                .contains("href=\"" + page + "\"");
    }

    @Test
    void confirmingMarksTheStationAgainAndKeepsTheOldMark() {
        long attempt = handedIn("ada", station);
        assertThat(unscored(attempt)).isNotEmpty().allMatch(line -> line.id().contains("vibration"));
        HttpResponse<String> answer = educator.post(page, Map.of("row", row(), "reason", WHY));

        assertThat(answer.statusCode()).isEqualTo(303);
        waitFor(attempt, 2);
        assertThat(unscored(attempt)).isEmpty();
        assertThat(history(attempt)).extracting(StoredMark::superseded).containsExactly(false, true);
        List<MarkChange> changes =
                server.database().direct(stores -> stores.marks().changes(attempt));
        assertThat(changes)
                .last()
                .satisfies(change -> assertThat(change.reason()).contains("vibration", WHY));
        assertThat(educator.page(page).body()).contains("Confirmed here", WHY);
    }

    @Test
    void aConfirmationHoldsInEveryStationAndChangesNoPractice() {
        SetCase other = school.set(station.caseVersionId(), SetCase.Mode.STATION);
        SetCase practice = school.set(station.caseVersionId(), SetCase.Mode.PRACTICE);
        long there = handedIn("ada", other);
        long practised = handedIn("bram", practice);
        educator.post(page, Map.of("row", row(), "reason", WHY));
        waitFor(there, 2);

        assertThat(unscored(there)).isEmpty();
        assertThat(history(practised)).hasSize(1);
        assertThat(unscored(practised)).isEmpty();
        assertThat(unscored(handedIn("cleo", other))).isEmpty();
    }

    @Test
    void whatIsTakenBackNoLongerScoresAndStaysOnRecord() {
        long attempt = handedIn("ada", station);
        educator.post(page, Map.of("all", "yes", "reason", WHY));
        waitFor(attempt, 2);
        Confirmation made =
                server.database().direct(stores -> stores.confirmations().all()).get(0);
        String back = page + "/" + made.id() + "/take-back";

        assertThat(educator.post(back, Map.of("reason", " ")).statusCode()).isEqualTo(422);
        assertThat(educator.post(back, Map.of("reason", "The page says otherwise."))
                        .statusCode())
                .isEqualTo(303);
        waitFor(attempt, 3);
        assertThat(unscored(attempt)).isNotEmpty();
        assertThat(educator.post(back, Map.of("reason", "Again.")).statusCode()).isEqualTo(422);
        List<Confirmation> all =
                server.database().direct(stores -> stores.confirmations().all());
        assertThat(all).singleElement().matches(one -> one.takenBackReason().isPresent());
    }

    @Test
    void withoutASentenceOrATickNothingIsConfirmed() {
        assertThat(educator.post(page, Map.of("row", row(), "reason", "")).statusCode())
                .isEqualTo(422);
        assertThat(educator.post(page, Map.of("row", "manoeuvres/vibration", "reason", WHY))
                        .statusCode())
                .isEqualTo(422);
        List<Confirmation> none =
                server.database().direct(stores -> stores.confirmations().all());
        assertThat(none).isEmpty();
    }

    @Test
    void theStudentSeesWhyALineDoesNotScoreAndWhatWasRight() {
        TestVisit visit = school.begin("ada", station);
        visit.send(HAND_IN);

        assertThat(visit.browser().page(visit.path() + "/debrief").body())
                .contains("not scored", "nobody here has checked what it stands on", "Read: vibration");
    }

    @Test
    void thePageIsWorkedByKeyboardOnAPhone() {
        try (Chromium chromium = Chromium.open(390, 844)) {
            WebDriver driver = chromium.driver();
            server.account("tess", Role.EDUCATOR);
            driver.get(server.address("/sign-in").toString());
            driver.findElement(By.name("name")).sendKeys("tess");
            driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
            Chromium.see(driver, "Case desk");
            driver.get(server.address("/educator/cohorts/" + station.cohortId()).toString());
            tabTo(driver, "what does not score yet");
            new Actions(driver).sendKeys(Keys.ENTER).perform();
            Chromium.see(driver, "Facts nobody has checked yet");
            tabTo(driver, "row");
            new Actions(driver).sendKeys(Keys.SPACE).perform();
            tabTo(driver, "reason");
            new Actions(driver).sendKeys(WHY, Keys.ENTER).perform();
            Chromium.see(driver, "Confirmed here");
            assertThat(driver.findElement(By.tagName("main")).getText()).contains(WHY);
        }
    }

    /** Tabs until what has the focus is of this name or text. */
    private static void tabTo(WebDriver driver, String name) {
        for (int i = 0; i < 80; i++) {
            new Actions(driver).sendKeys(Keys.TAB).perform();
            var focus = driver.switchTo().activeElement();
            if (name.equals(focus.getAttribute("name")) || focus.getText().equals(name)) {
                return;
            }
        }
        throw new AssertionError("no " + name + " is reached by the tab key");
    }
}

package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.Chromium;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.security.Role;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;

/** An intimate examination is put off at the bedside, with its reason, by keyboard on a phone. */
class DeferralPageTest {
    private final TestServer server = TestServer.start();

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void itIsPutOffWithAReasonAndTheDebriefSaysSo() {
        server.account("ana", Role.STUDENT, Role.EDUCATOR);
        TestBrowser desk = server.signInAs("ana");
        String attempt = Trials.open(desk, Trials.caseWith("root S1 left"));
        assertThat(Trials.send(
                                desk,
                                attempt,
                                "a",
                                "{\"type\":\"deferred\",\"manoeuvre\":\"triceps-reflex\",\"reason\":\"not-needed\"}")
                        .statusCode())
                .isEqualTo(422);
        try (Chromium chromium = Chromium.open(390, 844)) {
            WebDriver driver = chromium.driver();
            Hands hands = Hands.withKeyboard(driver);
            driver.get(server.address("/sign-in").toString());
            driver.findElement(By.name("name")).sendKeys("ana");
            driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
            hands.see("Case desk");
            driver.get(server.address(attempt).toString());
            hands.see("The sheet is empty");
            hands.pick("Type or pick what to examine or ask", "finger in the rectum");
            hands.pressSummary("Put it off, with a reason");
            hands.choose("I would put this off, because", "teaching-setting");
            hands.press("Put it off");
            hands.see("Written down: put off, because it is not done for the sake of teaching alone.");
        }
        assertThat(desk.json(attempt).body()).contains("\"reason\":\"teaching-setting\"");
        Trials.send(desk, attempt, "in", "{\"type\":\"handed-in\"}");

        assertThat(desk.page(attempt + "/debrief").body())
                .contains("put off: finger in the rectum, because it is not done", "it costs nothing");
    }
}

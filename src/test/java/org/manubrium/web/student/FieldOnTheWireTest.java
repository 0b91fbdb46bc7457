package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.manubrium.Chromium;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Of a visual field the browser learns the points that were tried, and nothing of the others. */
class FieldOnTheWireTest {
    private static final String CASE = """
            title: A carter who hits door frames
            patient: {age: 61, sex: male, name: Ord Pellam}
            conditions: [{is: %s}]
            """;
    private static final String HALF_BLIND = CASE.formatted("occipital-infarct, side: left");
    private static final String OTHER = CASE.formatted("dental-decay");

    private static String answer(TestBrowser student, String attempt, String side, String place) {
        return Trials.send(
                        student,
                        attempt,
                        side + place,
                        "{\"type\":\"probed\",\"manoeuvre\":\"visual-field\",\"side\":\"%s\",\"place\":\"%s\",\"technique\":{}}"
                                .formatted(side, place))
                .body();
    }

    @Test
    void aSeenPointOfAHalfBlindPatientIsAnsweredToTheByteAsAnyOther() {
        try (TestServer server = TestServer.start()) {
            TestBrowser student = server.signInAs(Role.EDUCATOR);
            String halfBlind = Trials.open(student, HALF_BLIND);
            String other = Trials.open(student, OTHER);

            assertThat(answer(student, halfBlind, "right", "upper-inner"))
                    .isEqualTo(answer(student, other, "right", "upper-inner"));
            assertThat(answer(student, halfBlind, "right", "upper-outer"))
                    .contains("Nothing there yet.")
                    .isNotEqualTo(answer(student, other, "right", "upper-outer"));
            assertThat(student.json(halfBlind).body().split("Nothing there yet", -1))
                    .hasSize(2);
        }
    }

    /** The points of the drawing are reached with the keyboard too, at the width of a phone. */
    @Test
    void thePointsNotYetTriedAreTriedOnTheDrawing() {
        try (TestServer server = TestServer.start();
                Chromium chromium = Chromium.open(390, 844)) {
            Account account = server.account("ana", Role.STUDENT, Role.EDUCATOR);
            TestBrowser desk = server.signInAs(account.loginName());
            String attempt = Trials.open(desk, HALF_BLIND);
            WebDriver driver = chromium.driver();
            Hands hands = Hands.withMouse(driver);
            driver.get(server.address("/sign-in").toString());
            driver.findElement(By.name("name")).sendKeys("ana");
            driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
            hands.see("Case desk");
            driver.get(server.address(attempt).toString());
            hands.see("Ord Pellam");

            hands.pick("Type or pick what to examine or ask", "visual field by confrontation");
            hands.press("Examine the right");
            hands.see("Nothing there yet.");
            WebElement point = driver.findElement(By.cssSelector("[aria-label='Try upper inner, right']"));
            hands.run("arguments[0].focus()", point);
            new Actions(driver).sendKeys(Keys.ENTER).perform();
            new WebDriverWait(driver, java.time.Duration.ofSeconds(15))
                    .until(d -> d.findElements(By.cssSelector(".field-said li")).size() == 2);

            assertThat(driver.findElement(By.cssSelector(".field-said")).getText())
                    .contains("upper inner quarter");
            assertThat(desk.json(attempt).body().split("\"probed\"", -1)).hasSize(3);
        }
    }
}

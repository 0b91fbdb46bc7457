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
import org.openqa.selenium.WebDriver;

/** A whole encounter in a real browser, from signing in to the debrief. */
class BrowserEncounterTest {
    private static final String CASE = """
            title: A joiner with pain in his arm
            patient: {age: 46, sex: male, name: Hal Brennock}
            conditions: [{is: root-compression, level: C7, side: left, severity: 0.8, onset: 6 weeks}]
            differential:
              - {is: root-compression, level: C7, side: left}
              - {is: root-compression, level: C6, side: left}
              - {is: healthy}
            conclusion: {next: [mri-cervical-spine]}
            """;

    @Test
    void anEncounterByMouseAtTheWidthOfADesk() {
        try (Chromium chromium = Chromium.open(1280, 900)) {
            encounter(chromium.driver(), Hands.withMouse(chromium.driver()), true);
        }
    }

    @Test
    void anEncounterByKeyboardAloneAtTheWidthOfAPhone() {
        try (Chromium chromium = Chromium.open(390, 844)) {
            encounter(chromium.driver(), Hands.withKeyboard(chromium.driver()), false);
        }
    }

    private static void encounter(WebDriver driver, Hands hands, boolean asksBeforehand) {
        try (TestServer server = TestServer.start()) {
            Account account = server.account("ana", Role.STUDENT, Role.EDUCATOR);
            TestBrowser desk = server.signInAs(account.loginName());
            String attempt = Trials.open(desk, CASE + (asksBeforehand ? "expect: yes\n" : ""));
            signIn(server, driver);
            driver.get(server.address(attempt).toString());
            hands.see("Hal Brennock");

            if (asksBeforehand) {
                expect(hands);
            }
            examine(hands);

            driver.navigate().refresh();
            hands.see("Triceps reflex");
            assertThat(desk.json(attempt).body()).contains("\"grade\":\"1\"", "\"answer\":[\"abnormal\"]");

            conclude(hands);
            hands.press("Hand in…");
            hands.press("Hand in now");
            hands.see("Read the debrief");
            hands.press("Read the debrief");
            hands.see("Debrief");
            hands.see("triceps reflex, left");
            if (asksBeforehand) {
                compared(hands);
            }
        }
    }

    private static void compared(Hands hands) {
        hands.see("Before examining you thought of nerve root compression");
        hands.see("1 of 2 signs you expected of it would be there: triceps reflex");
        hands.see("It would leave as it is: biceps reflex");
        hands.see("this was there of what you expected: triceps reflex");
        hands.see("Before examining you thought of optic neuritis, which is not among what this case weighs");
    }

    private static void expect(Hands hands) {
        hands.see("Before you examine: what do you expect?");
        hands.pick("Likely diagnosis", "nerve root compression");
        hands.pick("Sign 1 you expect of it", "triceps reflex");
        hands.pick("Sign 2 you expect of it", "biceps reflex");
        hands.pick("Another likely diagnosis", "optic neuritis");
        hands.pick("Sign 1 you expect of that one", "pupil");
        hands.see("Saved");
    }

    private static void signIn(TestServer server, WebDriver driver) {
        driver.get(server.address("/sign-in").toString());
        driver.findElement(By.name("name")).sendKeys("ana");
        driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
        Hands.withMouse(driver).see("Case desk");
    }

    private static void examine(Hands hands) {
        hands.pick("Type or pick what to examine or ask", "ask for consent");
        hands.see("Explain the examination");
        hands.pick("Type or pick what to examine or ask", "triceps reflex");
        hands.press("Examine the right");
        hands.press("Examine the left");
        hands.see("Which roots does it test?");
        hands.choose("left", "1");
        hands.choose("left", "abnormal");
        hands.see("What does it mean in this patient?");
        hands.see("Saved");
    }

    private static void conclude(Hands hands) {
        hands.pick("Where is the fault?", "root C7 left");
        hands.pick("The most likely", "nerve root compression");
        hands.pick("What next?", "mri");
        hands.see("Saved");
    }
}

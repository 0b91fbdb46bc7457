package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.Chromium;
import org.manubrium.TestServer;
import org.manubrium.TestTraffic;
import org.manubrium.Trials;
import org.manubrium.security.Role;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * What a page brings over the network before its first sign is seen, without fonts, with an empty cache: less than 150 kB.
 * The limit is a design value: about a second on a slow mobile connection of 1.5 Mbit/s.
 */
class PageWeightTest {
    private static final long LIMIT = 150_000;
    private static final String CASE = """
            title: A stiff knee
            patient: {age: 46, sex: male, name: Hal Brennock}
            conditions: [{is: healthy}]
            differential: [{is: healthy}, {is: root-compression, level: C6, side: left}]
            """;

    private static final TestServer SERVER = TestServer.start();
    private static final Chromium CHROMIUM = Chromium.listening(390, 844);
    private static final TestTraffic TRAFFIC = new TestTraffic(CHROMIUM);
    private static final Hands HANDS = Hands.withMouse(CHROMIUM.driver());
    private static String attempt = "";

    @BeforeAll
    static void signIn() {
        String name = SERVER.account("ana", Role.STUDENT, Role.EDUCATOR).loginName();
        attempt = Trials.open(SERVER.signInAs(name), CASE);
        go("/sign-in");
        CHROMIUM.driver().findElement(By.name("name")).sendKeys(name);
        CHROMIUM.driver().findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
        HANDS.see("Case desk");
    }

    @AfterAll
    static void close() {
        CHROMIUM.close();
        SERVER.close();
    }

    private static void go(String path) {
        CHROMIUM.driver().get(SERVER.address(path).toString());
    }

    private static void light(List<TestTraffic.Came> came) {
        assertThat(came).hasSizeGreaterThan(10);
        assertThat(TestTraffic.bytes(came)).as(came.toString()).isBetween(20_000L, LIMIT);
    }

    private static void waitForSigns(int signs) {
        new WebDriverWait(CHROMIUM.driver(), Duration.ofSeconds(20))
                .until(driver ->
                        driver.findElements(By.cssSelector(".sign > .heard")).size() >= signs);
    }

    @Test
    void bedsideIsLightUpToTheFirstSign() {
        TRAFFIC.since();
        go(attempt);
        HANDS.pick("Type or pick what to examine or ask", "knee reflex");
        HANDS.press("Examine the right");
        waitForSigns(1);

        light(TRAFFIC.since());
    }

    /** One manoeuvre of each family that brings drawings of its own; each stands there in health and with an ailment. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "knee-reflex?with=root-compression%7CL4",
                "gait?with=pseudobulbar-palsy",
                "apex-place",
                "breath-sounds-front",
                "nails",
                "liver-edge",
                "tongue-out",
                "eye-movement",
                "neck-vein-height"
            })
    void signDeskIsLight(String sign) {
        TRAFFIC.since();
        go("/educator/signs/" + sign);
        waitForSigns(sign.contains("with=") ? 2 : 1);

        light(TRAFFIC.since());
    }

    @Test
    void drillIsLight() {
        TRAFFIC.since();
        go("/student/signs");
        HANDS.see("Sign 1 of");
        waitForSigns(
                CHROMIUM.driver().findElements(By.cssSelector(".panel .sign")).size());

        light(TRAFFIC.since());
    }
}

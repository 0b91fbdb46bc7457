package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.Chromium;
import org.manubrium.TestBrowser;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.security.Role;
import org.manubrium.store.SetCase;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** No page has a fault that an accessibility scan finds, wide or narrow, light or dark. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessibilityTest {
    private static final String AXE = source();

    private final TestServer server = TestServer.start();
    private final Chromium chromium = Chromium.open(1280, 900);
    private final List<String> pages = new ArrayList<>();

    @BeforeAll
    void fill() {
        server.account("ana", Role.STUDENT, Role.EDUCATOR, Role.REVIEWER);
        TestBrowser desk = server.signInAs("ana");
        String faulty = Trials.location(desk.post("/educator/drafts", Map.of("text", "patient: {age: 470}\n")));
        String open = Trials.open(desk, Trials.caseWith("root C7 left"));
        Trials.send(desk, open, "a", "{\"type\":\"asked\",\"question\":\"consent\"}");
        for (String side : List.of("right", "left")) {
            Trials.send(
                    desk,
                    open,
                    side,
                    "{\"type\":\"probed\",\"manoeuvre\":\"triceps-reflex\",\"side\":\"%s\",\"place\":\"\",\"technique\":{}}"
                            .formatted(side));
        }
        String marked = Trials.open(desk, Trials.caseWith("root S1 left"));
        Trials.send(desk, marked, "in", "{\"type\":\"handed-in\"}");
        String cohort =
                Trials.location(desk.post("/educator/cohorts", Map.of("name", "Autumn", "convention", "alder")));
        pages.addAll(List.of("/student", open, marked + "/debrief", "/educator", "/educator/drafts/new", faulty));
        pages.addAll(List.of("/educator/signs", "/educator/signs/knee-reflex?with=root-compression%7CL4"));
        pages.addAll(List.of("/educator/cohorts", cohort, "/reviewer", cohort.replace("/educator", "/reviewer")));
        SetCase station = new TestSchool(server).station(TestSchool.UNCHECKED);
        String work = "/educator/cohorts/" + station.cohortId();
        pages.addAll(
                List.of(work, work + "/work/" + station.id() + "/facts", work + "/work/" + station.id() + "/weights"));
        pages.addAll(List.of("/account/password", "/no-such-page"));
        signIn();
    }

    private void signIn() {
        ChromeDriver driver = chromium.driver();
        driver.get(server.address("/sign-in").toString());
        assertThat(faults(driver)).as("the sign-in page").isEmpty();
        driver.findElement(By.name("name")).sendKeys("ana");
        driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
        new WebDriverWait(driver, java.time.Duration.ofSeconds(15))
                .until(d -> !String.valueOf(d.getCurrentUrl()).contains("sign-in"));
    }

    @AfterAll
    void stop() {
        chromium.close();
        server.close();
    }

    /** Colours do not follow the width, nor does the layout follow the colours: each is met once. */
    @ParameterizedTest
    @CsvSource({"1280,light", "390,dark"})
    void noPageHasAFaultThatAScanFinds(int width, String scheme) {
        ChromeDriver driver = chromium.driver();
        Chromium.resize(driver, width, 900);
        show(driver, scheme);
        for (String page : pages) {
            driver.get(server.address(page).toString());
            new WebDriverWait(driver, java.time.Duration.ofSeconds(15))
                    .until(d -> d.findElements(By.cssSelector(".waiting")).isEmpty());
            assertThat(faults(driver)).as("%s at %d, %s", page, width, scheme).isEmpty();
        }
    }

    @Test
    void theScanFindsAFaultWhereThereIsOne() {
        ChromeDriver driver = chromium.driver();
        driver.get(server.address("/student").toString());
        driver.executeScript("document.documentElement.removeAttribute('lang')");
        assertThat(faults(driver))
                .anySatisfy(found -> assertThat(found.toString()).startsWith("html-has-lang"));
    }

    private static void show(ChromeDriver driver, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Run in the page itself, which has no frames: the library's own way opens a window for each scan. */
    private static List<?> faults(ChromeDriver driver) {
        driver.executeScript(AXE);
        Object found = driver.executeAsyncScript(
                "const done = arguments[0];"
                        + "axe.run({resultTypes: ['violations']}).then(run => "
                        + "done(run.violations.map(rule => rule.id + ': ' + rule.nodes[0].html)), fault => done(['' + fault]))");
        return (List<?>) Objects.requireNonNull(found);
    }

    private static String source() {
        try (InputStream in = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

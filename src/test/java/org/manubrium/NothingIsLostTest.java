package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.BedsideBrowser.button;
import static org.manubrium.BedsideBrowser.chip;
import static org.manubrium.BedsideBrowser.combobox;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.manubrium.store.SetCase;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** The bedside in a real browser: what is reloaded, doubled, clicked twice or cut off loses and duplicates nothing. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NothingIsLostTest {
    private static final String NEXT_LINE = "Next line";

    private final Chromium chromium = Chromium.open(1280, 900);
    private final ChromeDriver driver = chromium.driver();
    private final BedsideBrowser hands = new BedsideBrowser(driver);
    private TestServer server = TestServer.start();

    @AfterAll
    void closeBrowser() {
        chromium.close();
    }

    @BeforeEach
    void wide() {
        hands.size(1280, 900);
    }

    @AfterEach
    void closeServer() {
        server.close();
    }

    @Test
    void leavingAndComingBackKeepsEverything() {
        open(TestServer.start());
        begin();
        String before = hands.find("//ol[@class='lines']").getText();
        driver.navigate().refresh();
        hands.find(button("Triceps reflex"));

        assertThat(hands.find("//ol[@class='lines']").getText().lines().limit(2))
                .isEqualTo(before.lines().limit(2).toList())
                .hasSize(2);
        assertThat(hands.stored()).isEqualTo(3);
    }

    @Test
    void twoTabsShowTheSameSheetAndDuplicateNothing() {
        open(TestServer.start());
        begin();
        String first = driver.getWindowHandle();
        String address = driver.getCurrentUrl();
        driver.switchTo().newWindow(WindowType.TAB);
        hands.size(1280, 900);
        driver.get(address);
        hands.click(button("Triceps reflex"));
        hands.click(chip("left", "readings", "1"));
        hands.settle(4);
        driver.close();
        driver.switchTo().window(first);

        hands.chosen(chip("left", "readings", "1"));
        hands.click(button("Examine the left"));
        hands.settle(5);
    }

    @Test
    void doubleClickExaminesOnce() {
        open(TestServer.start());
        begin();
        WebElement right = hands.find(button("Examine the right"));
        new Actions(driver).doubleClick(right).perform();
        hands.settle(4);
        hands.click(chip("right", "readings", "2"));
        hands.settle(5);
    }

    @Test
    void serverThatStopsAndComesBackLosesNothing(@TempDir Path folder) {
        String url = "jdbc:h2:file:" + folder.resolve("manubrium");
        open(TestServer.on(url));
        begin();
        String port = String.valueOf(server.address("/").getPort());
        server.close();
        hands.click(chip("left", "readings", "1"));
        hands.click(chip("left", "questions", "abnormal"));
        server = TestServer.on(url, "--port", port);

        hands.settle(5);
        assertThat(driver.findElements(By.className("fault"))).isEmpty();
    }

    private void open(TestServer fresh) {
        server.close();
        server = fresh;
        driver.manage().deleteAllCookies();
        TestSchool school = new TestSchool(server);
        SetCase set = school.practice(TestSchool.ROOT);
        assertThat(set.id()).isPositive();
        school.student("ada");
    }

    private void comeIn() {
        driver.get(server.address("/sign-in").toString());
        driver.findElement(By.id("name")).sendKeys("ada");
        driver.findElement(By.id("password")).sendKeys(TestServer.PASSWORD, Keys.ENTER);
        hands.find("//h1[.='Your patients']");
    }

    /** Comes in, asks for consent, moves the patient and examines the left triceps: three events. */
    private void begin() {
        comeIn();
        hands.click(button("Examine this patient"));
        hands.find(combobox(NEXT_LINE));
        hands.choose(NEXT_LINE, "consent", "Explain");
        hands.click("//button[@data-position='legs-over-edge']");
        hands.choose(NEXT_LINE, "triceps ref", "Triceps reflex");
        hands.click(button("Examine the left"));
        hands.find(chip("left", "readings", "1"));
        hands.settle(3);
    }
}

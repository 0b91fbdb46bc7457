package org.manubrium;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless browser with a profile of its own, for one test class. */
public final class Chromium implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Path profile;
    private final ChromeDriver driver;

    private Chromium(Path profile, ChromeDriver driver) {
        this.profile = profile;
        this.driver = driver;
    }

    /** A browser with a window of this size, in CSS pixels. */
    public static Chromium open(int width, int height) {
        return open(width, height, Map.of());
    }

    /** The same, and it keeps a log of what comes over the network, for {@link TestTraffic}. */
    public static Chromium listening(int width, int height) {
        return open(width, height, Map.of("performance", "ALL"));
    }

    private static Chromium open(int width, int height, Map<String, String> logs) {
        try {
            Path profile = Files.createTempDirectory("chromium");
            ChromeOptions options = new ChromeOptions();
            options.addArguments(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--disable-smooth-scrolling",
                    "--user-data-dir=" + profile);
            options.setCapability("goog:loggingPrefs", logs);
            options.setBinary(onPath("chromium").toString());
            ChromeDriver driver = new ChromeDriver(
                    new ChromeDriverService.Builder()
                            .usingDriverExecutable(onPath("chromedriver").toFile())
                            .build(),
                    options);
            resize(driver, width, height);
            driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(30));
            return new Chromium(profile, driver);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Found here rather than by the driver's own manager, which would ask the network. */
    private static Path onPath(String program) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator, -1))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "needs the packages chromium and chromium-driver: no " + program + " on the path"));
    }

    /** The size of the page itself: a headless window is never narrower than 500 pixels. */
    public static void resize(ChromeDriver driver, int width, int height) {
        driver.manage().window().setSize(new Dimension(Math.max(width, 500), height));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    public ChromeDriver driver() {
        return driver;
    }

    /** Waits until the page holds the text; asks the page itself, so that it may be replaced while we look. */
    public static void see(WebDriver driver, String text) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> "\"" + text + "\" on\n" + body(driver))
                .until(d -> body(d).contains(text));
    }

    /** The text of the page, as it stands now. */
    public static String body(WebDriver driver) {
        return String.valueOf(
                ((JavascriptExecutor) driver).executeScript("return document.body ? document.body.innerText : ''"));
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

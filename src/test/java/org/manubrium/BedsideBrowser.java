package org.manubrium;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A hand with a mouse at the bedside page, and a look at what the server has stored. */
final class BedsideBrowser {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final ChromeDriver driver;

    BedsideBrowser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Shows pages as a screen of this size does; a window of its own cannot be this narrow. */
    void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    WebElement find(String xpath) {
        return new WebDriverWait(driver, PATIENCE)
                .ignoring(StaleElementReferenceException.class)
                .withMessage(() -> xpath + " at " + driver.getCurrentUrl())
                .until(d -> d.findElements(By.xpath(xpath)).stream()
                        .filter(WebElement::isDisplayed)
                        .findFirst()
                        .orElse(null));
    }

    /** Waits until everything written is stored. */
    void settle(int events) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> events + " events; there are " + stored())
                .until(d -> stored() == events);
    }

    /** How many events the server has stored of the attempt that is open. */
    long stored() {
        return number(driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "fetch(location.pathname, {headers: {Accept: 'application/json'}})"
                + ".then(r => r.json()).then(read => done(read.events.length))"));
    }

    void click(String xpath) {
        WebElement found = find(xpath);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", found);
        new Actions(driver).moveToElement(found).click().perform();
    }

    private static long number(@Nullable Object given) {
        return ((Number) Objects.requireNonNull(given)).longValue();
    }

    /** Types into the combobox of this name and clicks on the row that begins so. */
    void choose(String label, String typed, String row) {
        click(combobox(label));
        type(typed);
        click("//div[@role='option'][starts-with(normalize-space(.), '" + row + "')]");
    }

    /** Waits until the choice in this label is the chosen one. */
    void chosen(String xpath) {
        new WebDriverWait(driver, PATIENCE)
                .ignoring(StaleElementReferenceException.class)
                .withMessage(() -> xpath + " is not chosen")
                .until(d -> d.findElement(By.xpath(xpath + "/input")).isSelected());
    }

    void type(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    static String combobox(String label) {
        return "//input[@role='combobox'][@id=//label[starts-with(normalize-space(.), '" + label + "')]/@for]";
    }

    static String button(String text) {
        return "//button[starts-with(normalize-space(.), '" + text + "')]";
    }

    /** The chip with this value in the group with this legend. */
    static String chip(String legend, String within, String chosen) {
        return "//div[contains(@class, '" + within + "')]//fieldset[legend[normalize-space(.)='" + legend
                + "']]//label[input[@value='" + chosen + "']]";
    }
}

package org.manubrium.web.student;

import java.time.Duration;
import org.manubrium.Chromium;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A person at the page: with a mouse, or with the keyboard alone. Things are named as they read on the page. */
abstract class Hands {
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    final WebDriver driver;

    Hands(WebDriver driver) {
        this.driver = driver;
    }

    static Hands withMouse(WebDriver driver) {
        return new WithMouse(driver);
    }

    static Hands withKeyboard(WebDriver driver) {
        return new WithKeyboard(driver);
    }

    /** Presses the button or link that reads so. */
    abstract void press(String text);

    /** Opens the part of the page under this summary. */
    abstract void pressSummary(String text);

    /** Picks the choice with this value in the visible group under this legend. */
    abstract void choose(String legend, String value);

    /** Types into the box with this label or placeholder, and takes the first that it offers. */
    abstract void pick(String box, String text);

    /** Waits until the page holds the text. */
    void see(String text) {
        Chromium.see(driver, text);
    }

    Object run(String script, Object... with) {
        Object found = ((JavascriptExecutor) driver).executeScript(script, with);
        return found == null ? "" : found;
    }

    private static final class WithMouse extends Hands {
        WithMouse(WebDriver driver) {
            super(driver);
        }

        /** Finds and clicks; the page may draw itself anew in between, and then it is found again. */
        private WebElement click(String script, Object... with) {
            return new WebDriverWait(driver, PATIENCE)
                    .ignoring(StaleElementReferenceException.class)
                    .withMessage(() -> script + " " + java.util.Arrays.toString(with))
                    .until(d -> run(script, with) instanceof WebElement found ? clicked(found) : null);
        }

        private WebElement clicked(WebElement target) {
            run("arguments[0].scrollIntoView({block: 'center'})", target);
            target.click();
            return target;
        }

        @Override
        void press(String text) {
            click(
                    "return [...document.querySelectorAll('button, a')]"
                            + ".find(e => e.checkVisibility() && e.textContent.trim() === arguments[0])",
                    text);
        }

        @Override
        void pressSummary(String text) {
            click(
                    "return [...document.querySelectorAll('summary')]"
                            + ".find(e => e.checkVisibility() && e.textContent.trim() === arguments[0])",
                    text);
        }

        @Override
        void choose(String legend, String value) {
            click(
                    "return [...document.querySelectorAll('fieldset')].filter(f => f.checkVisibility()"
                            + " && f.querySelector('legend')?.textContent.trim() === arguments[0])"
                            + ".map(f => f.querySelector(`input[value='${arguments[1]}']`)).find(i => i)?.closest('label')",
                    legend,
                    value);
        }

        @Override
        void pick(String box, String text) {
            WebElement input = click(
                    "return [...document.querySelectorAll('input')].find(i => i.checkVisibility()"
                            + " && (i.placeholder === arguments[0] || i.labels[0]?.textContent.trim() === arguments[0]))",
                    box);
            input.sendKeys(text);
            click("return [...document.querySelectorAll('[role=option]')].find(o => o.checkVisibility())");
        }
    }

    private static final class WithKeyboard extends Hands {
        private static final int ENOUGH = 400;

        WithKeyboard(WebDriver driver) {
            super(driver);
        }

        private void type(CharSequence... keys) {
            new Actions(driver).sendKeys(keys).perform();
        }

        /** Goes on with Tab until the focus is where the script says. */
        private void tabTo(String script, String... name) {
            for (int i = 0; i < ENOUGH; i++) {
                if (Boolean.TRUE.equals(run("const e = document.activeElement; return " + script, (Object[]) name))) {
                    return;
                }
                type(Keys.TAB);
            }
            throw new AssertionError("the keyboard does not reach \"" + String.join(", ", name) + "\"");
        }

        @Override
        void press(String text) {
            tabTo("['BUTTON', 'A'].includes(e.tagName) && e.textContent.trim() === arguments[0]", text);
            type(Keys.ENTER);
        }

        @Override
        void pressSummary(String text) {
            tabTo("e.tagName === 'SUMMARY' && e.textContent.trim() === arguments[0]", text);
            type(Keys.ENTER);
        }

        @Override
        void choose(String legend, String value) {
            tabTo(
                    "['radio', 'checkbox'].includes(e.type)"
                            + " && e.closest('fieldset').querySelector('legend').textContent.trim() === arguments[0]"
                            + " && e.closest('fieldset').querySelector(`input[value='${arguments[1]}']`) !== null",
                    legend,
                    value);
            type(Keys.SPACE);
            for (int i = 0;
                    i < ENOUGH && !run("return document.activeElement.value").equals(value);
                    i++) {
                type(Keys.ARROW_RIGHT);
            }
        }

        @Override
        void pick(String box, String text) {
            tabTo(
                    "e.tagName === 'INPUT' && (e.placeholder === arguments[0]"
                            + " || e.labels[0]?.textContent.trim() === arguments[0])",
                    box);
            type(text);
            type(Keys.ENTER);
        }
    }
}

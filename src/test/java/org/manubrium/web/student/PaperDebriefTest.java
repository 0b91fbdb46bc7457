package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.Chromium;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.TestVisit;
import org.manubrium.exchange.SheetJson;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.key.Origin;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.Pdf;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** The debrief of a long attempt fits on one sheet of A4. */
class PaperDebriefTest {
    private static final String LONG = "It was said of the side that was not examined, and of the wrong level too. ";
    private static final String SAID = "\"type\":\"answered\",\"manoeuvre\":\"\",\"side\":\"none\",\"place\":\"\","
            + "\"question\":\"site\",\"answer\":[\"root C6 left\"]";
    /** 188 mm of A4 in CSS pixels. */
    private static final int PAPER_WIDTH = 710;

    /** Nothing is cut off at the foot of the sheet. */
    private static final String NEEDED =
            "const main = document.querySelector('main');" + " return main.scrollHeight <= main.clientHeight + 1";

    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b(?!s)");

    private final TestServer server = TestServer.start();

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void aLongAttemptAtWhichNearlyEverythingWentWrongIsPrintedOnOneSheet() throws Exception {
        TestSchool school = new TestSchool(server);
        TestVisit visit = school.begin("ana", school.practice(TestSchool.ROOT));
        String attempt = visit.path();
        visit.send(SAID);
        visit.send("\"type\":\"handed-in\"");
        long number = Long.parseLong(attempt.replaceAll("\\D", ""));
        server.database()
                .inTransaction(stores ->
                        stores.marks().add(number, "alder", 12, SheetJson.write(long110()), java.time.Instant.now()));
        try (Chromium chromium = Chromium.open(1280, 900)) {
            ChromeDriver driver = chromium.driver();
            driver.get(server.address("/sign-in").toString());
            driver.findElement(By.name("name")).sendKeys("ana");
            driver.findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
            Hands.withMouse(driver).see("Your patients");
            driver.get(server.address(attempt + "/debrief").toString());
            Hands.withMouse(driver).see("Debrief");
            PrintOptions a4 = new PrintOptions();
            a4.setPageSize(new PageSize(29.7, 21.0));

            int pages = pages(driver.print(a4));
            driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
            Chromium.resize(driver, PAPER_WIDTH, 1100);
            Files.write(Path.of("target", "debrief.png"), driver.getScreenshotAs(OutputType.BYTES));
            assertThat(pages).as(heights(driver)).isEqualTo(1);
            assertThat(driver.executeScript(NEEDED)).as(heights(driver)).isEqualTo(true);
            assertThat(driver.findElement(By.tagName("main")).getText())
                    .contains("This sheet holds what cost most", "What could have done harm", "more that earned less")
                    .doesNotContain("step by step");
        }
    }

    /** As many lines as the longest shipped case has, nearly all lost, with everything that can stand beside them. */
    static MarkSheet long110() {
        Origin origin = new Origin("practice", "common-practice");
        List<Domain> domains = new ArrayList<>();
        for (DomainName name : DomainName.values()) {
            List<Line> lines = new ArrayList<>();
            for (int i = 0; i < 27; i++) {
                String asked = "Read: touch at the point of the fifth cervical root, left, " + i;
                lines.add(new Line(
                        name.word() + "/" + i, name, asked, LONG, LONG, i % 9 == 0 ? 1 : 0.1 * (i % 5), LONG, origin));
            }
            domains.add(new Domain(name, 12, 25, lines));
        }
        List<Harm> harms = IntStream.range(0, 7)
                .mapToObj(i -> new Harm("harm" + i, LONG, origin))
                .toList();
        List<Handled> handling = IntStream.range(0, 4)
                .mapToObj(i -> new Handled("h" + i, "The painful place last: light palpation", false, LONG, origin))
                .toList();
        List<String> notes = IntStream.range(0, 9).mapToObj(i -> LONG.repeat(6)).toList();
        return new MarkSheet("long", "alder", 12, domains, harms, handling, List.of(), notes);
    }

    private static String heights(ChromeDriver driver) {
        return String.valueOf(driver.executeScript("return [...document.querySelector('main').children]"
                + ".map(e => (e.className || e.tagName) + ' ' + Math.round(e.getBoundingClientRect().height)).join('; ')"
                + " + '; needed ' + document.querySelector('main').scrollHeight"));
    }

    private static int pages(Pdf pdf) throws Exception {
        byte[] bytes = Base64.getDecoder().decode(pdf.getContent());
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "debrief.pdf"), bytes);
        Matcher page = PAGE.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        int pages = 0;
        while (page.find()) {
            pages++;
        }
        return pages;
    }
}

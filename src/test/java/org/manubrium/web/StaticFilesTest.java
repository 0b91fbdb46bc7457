package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;

class StaticFilesTest {
    @Test
    void fileThatHasNotChangedIsNotSentAgain() {
        try (TestServer server = TestServer.start()) {
            TestBrowser browser = server.browser();
            HttpResponse<String> first = browser.page("/static/css/base.css");
            String tag = first.headers().firstValue("ETag").orElseThrow();

            HttpResponse<String> again =
                    browser.send(browser.request("/static/css/base.css").header("If-None-Match", tag));

            assertThat(first.statusCode()).isEqualTo(200);
            assertThat(first.headers().firstValue("Content-Type")).contains("text/css; charset=utf-8");
            assertThat(again.statusCode()).isEqualTo(304);
            assertThat(again.body()).isEmpty();
        }
    }

    @Test
    void everyFileThatThePagesFrameAsksForIsThere() {
        try (TestServer server = TestServer.start()) {
            TestBrowser browser = server.browser();
            String page = browser.page("/sign-in").body();

            assertThat(Pattern.compile("(?:href|src)=\"(/static/[^\"]+)\"")
                            .matcher(page)
                            .results()
                            .map(found -> found.group(1)))
                    .hasSizeGreaterThan(3)
                    .allSatisfy(path ->
                            assertThat(browser.page(path).statusCode()).as(path).isEqualTo(200));
        }
    }

    /** A phone that finds them one by one needs a round for each level of imports. */
    @Test
    void everyModuleOfTheBedsideIsAskedForAtOnce() throws IOException {
        String page = Files.readString(Path.of("src/main/resources/templates/student/bedside.html"));
        Set<Path> needed = new TreeSet<>();
        ledTo(Path.of("static/bedside/main.js"), needed);
        ledTo(Path.of("static/bedside/advice.js"), needed);

        assertThat(needed)
                .hasSizeGreaterThan(20)
                .allSatisfy(module ->
                        assertThat(page).contains("=\"/" + module.toString().replace('\\', '/') + "\">"));
        assertThat(Pattern.compile("rel=\"modulepreload\"")
                        .matcher(page)
                        .results()
                        .count())
                .isEqualTo(needed.size() - 2);
    }

    /** Adds a module and all that it imports as it is loaded. */
    private static void ledTo(Path module, Set<Path> found) throws IOException {
        if (!found.add(module)) {
            return;
        }
        Matcher imported = Pattern.compile("^(?:import|export)\\b[^;]*?\\bfrom \"([^\"]+)\"", Pattern.MULTILINE)
                .matcher(Files.readString(module));
        while (imported.find()) {
            ledTo(module.resolveSibling(imported.group(1)).normalize(), found);
        }
    }
}

package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
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

            assertThat(java.util.regex.Pattern.compile("(?:href|src)=\"(/static/[^\"]+)\"")
                            .matcher(page)
                            .results()
                            .map(found -> found.group(1)))
                    .hasSizeGreaterThan(3)
                    .allSatisfy(path ->
                            assertThat(browser.page(path).statusCode()).as(path).isEqualTo(200));
        }
    }
}

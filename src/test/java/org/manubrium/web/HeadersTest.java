package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;

class HeadersTest {
    @Test
    void everyAnswerCarriesThePolicyWhateverItIs() {
        try (TestServer server = TestServer.start()) {
            TestBrowser browser = server.signInAs(Role.STUDENT);
            List<HttpResponse<String>> answers = List.of(
                    browser.page("/sign-in"),
                    browser.page("/student"),
                    browser.page("/educator"),
                    browser.page("/static/css/base.css"),
                    browser.page("/static/nothing.css"),
                    browser.page("/no/such/page"),
                    browser.json("/no/such/page"),
                    browser.json("/health"),
                    browser.page("/"),
                    browser.send(browser.request("/sign-in").DELETE()));

            assertThat(answers)
                    .extracting(HttpResponse::statusCode)
                    .containsExactly(200, 200, 403, 200, 404, 404, 404, 200, 303, 405);
            assertThat(answers).allSatisfy(HeadersTest::carriesThePolicy);
        }
    }

    @Test
    void overPlainHttpNothingClaimsToBeSecure() {
        try (TestServer server = TestServer.start()) {
            HttpResponse<String> page = server.browser().page("/sign-in");

            assertThat(page.headers().firstValue("Strict-Transport-Security")).isEmpty();
            assertThat(cookie(page))
                    .contains("HttpOnly", "SameSite=Lax", "Path=/")
                    .doesNotContain("Secure");
        }
    }

    @Test
    void behindTlsCookiesAreSecure() {
        try (TestServer server = TestServer.start("--secure")) {
            HttpResponse<String> page = server.browser().page("/sign-in");

            assertThat(page.headers().firstValue("Strict-Transport-Security")).isPresent();
            assertThat(cookie(page)).contains("Secure", "HttpOnly");
        }
    }

    @Test
    void proxysWordCountsOnlyIfItIsTrusted() {
        try (TestServer plain = TestServer.start();
                TestServer trusting = TestServer.start("--trust-proxy")) {
            assertThat(cookie(asIfOverTls(plain))).doesNotContain("Secure");
            assertThat(cookie(asIfOverTls(trusting))).contains("Secure");
        }
    }

    private static HttpResponse<String> asIfOverTls(TestServer server) {
        TestBrowser browser = server.browser();
        return browser.send(
                browser.request("/sign-in").header("Accept", "text/html").header("X-Forwarded-Proto", "https"));
    }

    private static String cookie(HttpResponse<String> page) {
        return page.headers().firstValue("Set-Cookie").orElseThrow();
    }

    private static void carriesThePolicy(HttpResponse<String> answer) {
        assertThat(answer.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy)
                        .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                        .doesNotContain("unsafe"));
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(answer.headers().firstValue("Referrer-Policy")).contains("same-origin");
        assertThat(answer.headers().firstValue("Server")).isEmpty();
    }
}

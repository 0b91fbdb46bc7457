package org.manubrium.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;

class SignInPagesTest {
    private final TestServer server = TestServer.start();

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void signingInLeadsToTheFirstPageOfTheRole() {
        server.account("linnet", Role.EDUCATOR, Role.REVIEWER);
        TestBrowser browser = server.browser();

        HttpResponse<String> answer = enter(browser, "linnet", "");

        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(where(answer)).isEqualTo("/educator");
        assertThat(browser.page("/educator").body()).contains("Person linnet", "Sign out");
        assertThat(where(browser.page("/"))).isEqualTo("/educator");
    }

    @Test
    void signingInLeadsBackToThePageThatWasWantedButNeverToAnotherHost() {
        server.account("rowan", Role.STUDENT);

        assertThat(where(server.browser().page("/account/password"))).isEqualTo("/sign-in?then=%2Faccount%2Fpassword");
        assertThat(where(enter(server.browser(), "rowan", "/account/password"))).isEqualTo("/account/password");
        for (String elsewhere : new String[] {"//evil.example/", "https://evil.example/", "/\\evil.example", "x"}) {
            assertThat(where(enter(server.browser(), "rowan", elsewhere))).isEqualTo("/student");
        }
    }

    @Test
    void wrongPasswordIsSaidOnTheFormWhichKeepsTheName() {
        server.account("rowan", Role.STUDENT);

        HttpResponse<String> answer =
                server.browser().post("/sign-in", Map.of("name", "rowan", "password", "wrong password"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("is not right", "value=\"rowan\"").doesNotContain("wrong password");
    }

    @Test
    void afterFiveWrongPasswordsTheAccountWaitsWhicheverBrowserAsks() {
        server.account("rowan", Role.STUDENT);
        for (int i = 0; i < 5; i++) {
            server.browser().post("/sign-in", Map.of("name", "rowan", "password", "wrong"));
        }

        HttpResponse<String> answer = enter(server.browser(), "rowan", "");

        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.headers().firstValueAsLong("Retry-After").orElseThrow())
                .isBetween(800L, 901L);
        assertThat(answer.body()).contains("Try again in 15 minutes.");
    }

    @Test
    void signingInChangesTheCookieSoThatOneSetBeforehandIsWorthNothing() {
        server.account("rowan", Role.STUDENT);
        TestBrowser browser = server.browser();
        enter(browser, "rowan", "");
        String first = session(browser);
        enter(browser, "rowan", "");

        assertThat(session(browser)).isNotEqualTo(first);
        HttpResponse<String> old = server.browser()
                .send(server.browser()
                        .request("/student")
                        .header("Cookie", "manubrium=" + first)
                        .header("Accept", "application/json"));
        assertThat(old.statusCode()).isEqualTo(401);
    }

    @Test
    void signingOutEndsTheSessionInTheDatabase() {
        TestBrowser browser = server.signInAs(Role.STUDENT);
        String cookie = session(browser);

        assertThat(where(browser.post("/sign-out", Map.of()))).isEqualTo("/sign-in");

        HttpResponse<String> stolen = server.browser()
                .send(server.browser()
                        .request("/student")
                        .header("Cookie", "manubrium=" + cookie)
                        .header("Accept", "application/json"));
        assertThat(stolen.statusCode()).isEqualTo(401);
        assertThat(browser.json("/student").statusCode()).isEqualTo(401);
    }

    @Test
    void whatAPersonWroteIsNeverMarkup() {
        HttpResponse<String> answer =
                server.browser().post("/sign-in", Map.of("name", "\"><script>alert(1)</script>", "password", "x"));

        assertThat(answer.body()).doesNotContain("<script>alert");
    }

    @Test
    void secondServerOfTheSameDatabaseKnowsTheSession() {
        TestBrowser browser = server.signInAs(Role.STUDENT);

        try (TestServer other = TestServer.on(server.jdbcUrl())) {
            assertThat(browser.at(other).page("/student").statusCode()).isEqualTo(200);
            assertThat(browser.csrf()).isEqualTo(browser.at(other).csrf());
            browser.at(other).post("/sign-out", Map.of());
        }

        assertThat(browser.json("/student").statusCode()).isEqualTo(401);
    }

    @Test
    void demoEntryDoesNotExistOutsideTheDemo() {
        TestBrowser browser = server.browser();

        assertThat(browser.page("/sign-in").body()).doesNotContain("/demo/enter");
        assertThat(browser.post("/demo/enter", Map.of("role", "educator")).statusCode())
                .isEqualTo(404);
    }

    private static HttpResponse<String> enter(TestBrowser browser, String name, String then) {
        return browser.post("/sign-in", Map.of("name", name, "password", TestServer.PASSWORD, "then", then));
    }

    private static String where(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElseThrow();
    }

    private static String session(TestBrowser browser) {
        return browser.cookies().stream()
                .filter(cookie -> cookie.getName().equals("manubrium"))
                .findFirst()
                .orElseThrow()
                .getValue();
    }
}

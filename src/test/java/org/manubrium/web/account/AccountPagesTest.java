package org.manubrium.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;

class AccountPagesTest {
    private static final String NEW_PASSWORD = "another long password";

    private final TestServer server = TestServer.start();

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void firstEducatorsLinkMakesTheAccountSignsInAndWorksOnce() {
        String link = server.firstEducatorPath();
        TestBrowser browser = server.browser();
        assertThat(browser.page(link).body()).contains("The first educator");

        HttpResponse<String> made = browser.post(link, first("linnet", TestServer.PASSWORD));

        assertThat(made.statusCode()).isEqualTo(303);
        assertThat(browser.page("/educator").body()).contains("Dr Linnet");
        assertThat(browser.page("/reviewer").statusCode()).isEqualTo(200);
        assertThat(server.browser().page(link).statusCode()).isEqualTo(404);
        assertThat(server.browser()
                        .post(link, first("other", TestServer.PASSWORD))
                        .statusCode())
                .isEqualTo(404);
        assertThat(server.signInAs("linnet").page("/educator").statusCode()).isEqualTo(200);
    }

    @Test
    void poorPasswordDoesNotUseTheLinkUp() {
        String link = server.firstEducatorPath();
        TestBrowser browser = server.browser();

        HttpResponse<String> refused = browser.post(link, first("linnet", "short"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("at least 10 characters", "value=\"linnet\"");
        assertThat(browser.post(link, first("linnet", TestServer.PASSWORD)).statusCode())
                .isEqualTo(303);
    }

    @Test
    void linkThatNobodyMadeLeadsNowhere() {
        assertThat(server.browser().page("/first-educator/guessed").statusCode())
                .isEqualTo(404);
    }

    @Test
    void changedPasswordIsTheOneThatWorksAndEveryOtherBrowserIsSignedOut() {
        server.account("rowan", Role.STUDENT);
        TestBrowser here = server.signInAs("rowan");
        TestBrowser elsewhere = server.signInAs("rowan");

        HttpResponse<String> changed =
                here.post("/account/password", Map.of("present", TestServer.PASSWORD, "wanted", NEW_PASSWORD));

        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(changed.body()).contains("has been changed");
        assertThat(here.json("/student").statusCode()).isEqualTo(200);
        assertThat(elsewhere.json("/student").statusCode()).isEqualTo(401);
        assertThat(signIn(TestServer.PASSWORD)).isEqualTo(422);
        assertThat(signIn(NEW_PASSWORD)).isEqualTo(303);
    }

    @Test
    void wrongPresentPasswordChangesNothing() {
        server.account("rowan", Role.STUDENT);

        HttpResponse<String> refused = server.signInAs("rowan")
                .post("/account/password", Map.of("present", "not mine at all", "wanted", NEW_PASSWORD));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("present password is not right");
        assertThat(signIn(TestServer.PASSWORD)).isEqualTo(303);
    }

    private int signIn(String password) {
        return server.browser()
                .post("/sign-in", Map.of("name", "rowan", "password", password))
                .statusCode();
    }

    private static Map<String, String> first(String name, String password) {
        return Map.of("name", name, "display-name", "Dr Linnet", "password", password);
    }
}

package org.manubrium.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.school.account.DemoAccounts;
import org.manubrium.security.Role;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoEntryTest {
    private final TestServer server = TestServer.demo();

    @AfterAll
    void close() {
        server.close();
    }

    @ParameterizedTest
    @CsvSource({"student, /student", "educator, /educator", "reviewer, /reviewer"})
    void oneClickLeadsIn(String role, String page) {
        TestBrowser browser = server.browser();
        assertThat(browser.page("/sign-in").body()).contains("value=\"" + role + "\"");

        assertThat(browser.post("/demo/enter", Map.of("role", role)).headers().firstValue("Location"))
                .contains(page);
        assertThat(browser.page(page).statusCode()).isEqualTo(200);
    }

    @Test
    void clickWithoutTheFormsTokenIsRefused() {
        TestBrowser browser = server.browser();

        assertThat(browser.send(browser.form("/demo/enter", Map.of("role", "educator")))
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void roleThatDoesNotExistIsABadRequest() {
        assertThat(server.browser().post("/demo/enter", Map.of("role", "dean")).statusCode())
                .isEqualTo(400);
    }

    @Test
    void noPasswordLetsAnyoneInAsTheDemosPeople() {
        for (String password : new String[] {"", "demo", " "}) {
            Map<String, String> form = Map.of("name", DemoAccounts.loginName(Role.EDUCATOR), "password", password);
            assertThat(server.browser().post("/sign-in", form).statusCode()).isEqualTo(422);
        }
    }
}

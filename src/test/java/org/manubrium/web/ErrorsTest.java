package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;

class ErrorsTest {
    private static final int FIVE_MB = 5 << 20;

    private final TestServer server = TestServer.start();

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void personsGetAPageAndProgramsGetJson() {
        TestBrowser browser = server.browser();

        HttpResponse<String> page = browser.page("/nowhere");
        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("<h1>Not Found</h1>", "There is no page at this address.");

        HttpResponse<String> json = browser.json("/nowhere");
        assertThat(json.statusCode()).isEqualTo(404);
        assertThat(json.headers().firstValue("Content-Type")).contains("application/json");
        assertThat(json.body())
                .isEqualTo("{\"status\":404,\"error\":\"Not Found\",\"detail\":\"There is no page at this address.\"}");
    }

    @Test
    void wrongMethodIsToldWhichAreRight() {
        TestBrowser browser = server.browser();

        HttpResponse<String> answer = browser.send(browser.request("/sign-in").PUT(BodyPublishers.noBody()));

        assertThat(answer.statusCode()).isEqualTo(405);
        assertThat(answer.headers().firstValue("Allow"))
                .hasValueSatisfying(allowed -> assertThat(allowed).contains("GET", "POST"));
    }

    @Test
    void formOfFiveMegabytesIsRefusedWithASentence() {
        TestBrowser browser = server.browser();

        HttpResponse<String> answer = browser.post("/sign-in", Map.of("name", "x".repeat(FIVE_MB)));

        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("too large", "1 MB");
    }

    @Test
    void bodyThatDoesNotSayHowLongItIsIsRefusedToo() {
        TestBrowser browser = server.browser();
        String csrf = browser.csrf();

        HttpResponse<String> answer = browser.send(browser.request("/sign-in")
                .header("Accept", "application/json")
                .header("X-CSRF-Token", csrf)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofInputStream(() ->
                        new ByteArrayInputStream("name=x&".repeat(FIVE_MB / 7).getBytes(StandardCharsets.UTF_8)))));

        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @Test
    void uploadThatDoesNotSayHowLongItIsIsRefusedToo() {
        TestBrowser browser = server.browser();
        String csrf = browser.csrf();
        String head = "--cut\r\nContent-Disposition: form-data; name=\"name\"; filename=\"a.yaml\"\r\n\r\n";
        byte[] body = (head + "x".repeat(FIVE_MB) + "\r\n--cut--\r\n").getBytes(StandardCharsets.UTF_8);

        HttpResponse<String> answer = browser.send(browser.request("/sign-in")
                .header("Accept", "application/json")
                .header("X-CSRF-Token", csrf)
                .header("Content-Type", "multipart/form-data; boundary=cut")
                .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body))));

        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @Test
    void staleFormIsRefusedWithASentence() {
        TestBrowser student = server.signInAs(Role.STUDENT);

        HttpResponse<String> answer = student.send(
                student.form("/account/password", Map.of("_csrf", "of yesterday", "present", "a", "wanted", "b")));

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("out of date");
    }

    @Test
    void tokenOfAnotherBrowserIsRefused() {
        TestBrowser mine = server.browser();
        mine.page("/sign-in");

        HttpResponse<String> answer =
                mine.send(mine.form("/sign-in", Map.of("_csrf", server.browser().csrf(), "name", "a")));

        assertThat(answer.statusCode()).isEqualTo(403);
    }

    @Test
    void pathsOutOfTheStaticFolderLeadNowhere() {
        TestBrowser browser = server.browser();

        for (String path : new String[] {
            "/static/../logback.xml",
            "/static/%2e%2e/logback.xml",
            "/static/..%2flogback.xml",
            "/static/",
            "/static/css"
        }) {
            HttpResponse<String> answer = browser.page(path);
            assertThat(answer.statusCode()).as(path).isBetween(400, 404);
            assertThat(answer.body()).as(path).doesNotContain("appender");
        }
    }
}

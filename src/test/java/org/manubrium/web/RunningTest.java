package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;
import org.slf4j.LoggerFactory;

class RunningTest {
    @Test
    void healthFollowsTheDatabase() {
        try (TestServer server = TestServer.start()) {
            TestBrowser browser = server.browser();

            HttpResponse<String> well = browser.json("/health");
            assertThat(well.statusCode()).isEqualTo(200);
            assertThat(well.body()).contains("\"reachable\"");

            server.database().close();
            HttpResponse<String> ill = browser.json("/health");
            assertThat(ill.statusCode()).isEqualTo(503);
            assertThat(ill.body()).contains("\"unreachable\"");
        }
    }

    @Test
    void whatNobodyForesawIsANumberAndNoTrace() {
        try (TestServer server = TestServer.start()) {
            TestBrowser student = server.signInAs(Role.STUDENT);
            server.database().close();

            HttpResponse<String> answer = student.json("/student");

            assertThat(answer.statusCode()).isEqualTo(500);
            assertThat(answer.body()).contains("report number").doesNotContain("Exception", "hikari", "java");
            assertThat(student.page("/student").statusCode()).isEqualTo(500);
        }
    }

    @Test
    void metricsCountByRouteAndAreNotOnThePublicPort() throws Exception {
        try (TestServer server = TestServer.start()) {
            TestBrowser browser = server.browser();
            browser.page("/first-educator/a-secret-token");

            HttpResponse<String> metrics = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(server.metrics()).build(), HttpResponse.BodyHandlers.ofString());

            assertThat(metrics.body())
                    .contains(
                            "route=\"/first-educator/{token}\"", "status=\"404\"", "jvm_memory", "hikaricp_connections")
                    .doesNotContain("a-secret-token");
            assertThat(browser.page("/metrics").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void accessLogHoldsRoutesAndNothingPersonal() {
        ListAppender<ILoggingEvent> lines = new ListAppender<>();
        lines.start();
        Logger access = (Logger) LoggerFactory.getLogger("access");
        access.addAppender(lines);
        access.setAdditive(false);
        try (TestServer server = TestServer.start("--access-log")) {
            server.account("rowan", Role.STUDENT);
            server.signInAs("rowan").page("/first-educator/a-secret-token?q=private");
        } finally {
            access.detachAppender(lines);
            access.setAdditive(true);
        }

        assertThat(lines.list)
                .extracting(ILoggingEvent::getFormattedMessage)
                .anySatisfy(line -> assertThat(line).matches("POST /sign-in 303 \\d+ ms"))
                .anySatisfy(line -> assertThat(line).matches("GET /first-educator/\\{token} 404 \\d+ ms"))
                .noneSatisfy(line -> assertThat(line).containsAnyOf("rowan", "secret", "private", "127.0.0.1"));
    }

    @Test
    void serverAlreadyAskedFinishesBeforeItStops() {
        TestServer server = TestServer.start();
        TestBrowser browser = server.browser();
        String csrf = browser.csrf();
        var answer = java.util.concurrent.CompletableFuture.supplyAsync(() -> browser.send(
                browser.form("/sign-in", Map.of("name", "nobody", "password", "wrong password", "_csrf", csrf))));
        try {
            Thread.sleep(15);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }

        server.close();

        assertThat(answer.join().statusCode()).isEqualTo(422);
    }
}

package org.manubrium.web.shell;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.school.account.Sessions;
import org.manubrium.security.Token;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;

/** The shell around routes made for the purpose. */
class ShellTest {
    private static final Token VISIT = new Token("a-browser");

    private final Database database = Database.open(DatabaseSettings.throwAway(2));
    private final Metrics metrics = Metrics.open(0);
    private final Javalin server = Javalin.create(config -> {
                config.startup.showJavalinBanner = false;
                config.startup.startupWatcherEnabled = false;
                new Shell(new ShellSettings(false, false, false), new Sessions(database, Clock.systemUTC()), metrics)
                        .into(config);
                routes(config.routes);
            })
            .start("127.0.0.1", 0);

    @AfterEach
    void close() {
        server.stop();
        metrics.close();
        database.close();
    }

    @Test
    void jsonThatCannotBeReadIsABadRequest() throws Exception {
        assertThat(post("/note", "{\"text\":\"a\"}").statusCode()).isEqualTo(200);
        for (String broken : new String[] {"{\"text\":", "", "[1]", "{\"text\":{}}"}) {
            HttpResponse<String> answer = post("/note", broken);
            assertThat(answer.statusCode()).as(broken).isEqualTo(400);
            assertThat(answer.body()).contains("\"status\":400").doesNotContain("Exception", "jackson");
        }
    }

    @Test
    void routeThatNamesNoRoleIsClosedToEverybody() throws Exception {
        assertThat(get("/forgotten").statusCode()).isEqualTo(401);
    }

    @Test
    void evenAnErrorIsAnsweredInJsonWithoutATrace() throws Exception {
        HttpResponse<String> answer = get("/error");

        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body()).contains("\"status\":500").doesNotContain("deliberate");
    }

    @Test
    void askingForTheHeadersRunsNothing() throws Exception {
        HttpResponse<String> answer = send(request("/error").method("HEAD", BodyPublishers.noBody()));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Security-Policy")).isPresent();
    }

    private static void routes(RoutesConfig routes) {
        routes.post("/note", ctx -> ctx.result(ctx.bodyAsClass(Note.class).text()), Access.ANYONE);
        routes.get("/forgotten", ctx -> ctx.result("secret"));
        routes.get(
                "/error",
                ctx -> {
                    throw new AssertionError("deliberate");
                },
                Access.ANYONE);
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(request(path));
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return send(request(path)
                .header("Content-Type", "application/json")
                .header("Cookie", "manubrium-visit=" + VISIT.text())
                .header("X-CSRF-Token", VISIT.derived("csrf"))
                .POST(BodyPublishers.ofString(body)));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
    }

    record Note(String text) {}
}

package org.manubrium;

import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.manubrium.cli.Arguments;
import org.manubrium.security.Account;
import org.manubrium.security.Passwords;
import org.manubrium.security.Role;
import org.manubrium.store.Database;
import org.manubrium.web.WebServer;

/**
 * The real server on a free port over a fresh in-memory database, for one test:
 *
 * <pre>{@code
 * try (TestServer server = TestServer.start()) {
 *     TestBrowser student = server.signInAs(Role.STUDENT);
 *     assertThat(student.page("/student").statusCode()).isEqualTo(200);
 *     student.post("/somewhere", Map.of("field", "text"));      // adds the CSRF token by itself
 *     student.postJson("/attempts/1/events", "{…}");
 * }
 * }</pre>
 */
public final class TestServer implements AutoCloseable {
    /** The password of every account made here. */
    public static final String PASSWORD = "correct horse battery";

    // Made once: to hash a password is slow on purpose.
    private static final String HASH = new Passwords().hash(PASSWORD);

    private final Application application;
    private final String url;

    private TestServer(Application application, String url) {
        this.application = application;
        this.url = url;
    }

    /** A plain server with nobody in it. */
    public static TestServer start(String... options) {
        return on("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", options);
    }

    /** A server on this database, which another may share. */
    public static TestServer on(String jdbcUrl, String... options) {
        return new TestServer(run(jdbcUrl, options), jdbcUrl);
    }

    /** The demo with its one-click entry, as soon as it opens; more cases come to its school by and by. */
    public static TestServer demo() {
        return new TestServer(run("", "--demo"), "");
    }

    /** The address of the database, for {@link #on}. */
    public String jdbcUrl() {
        return url;
    }

    public URI address(String path) {
        return URI.create("http://127.0.0.1:" + application.port() + path);
    }

    public URI metrics() {
        return URI.create("http://127.0.0.1:" + application.metricsPort() + "/metrics");
    }

    public Database database() {
        return application.database();
    }

    public WebServer web() {
        return application.server();
    }

    /** The path of the first educator's one-time link. */
    public String firstEducatorPath() {
        return URI.create(application.firstEducatorLink().orElseThrow()).getPath();
    }

    /** A browser that nobody has used. */
    public TestBrowser browser() {
        return new TestBrowser(this);
    }

    /** Makes an account that can sign in with {@link #PASSWORD}. */
    public Account account(String loginName, Role... roles) {
        return database()
                .inTransaction(stores ->
                        stores.accounts().add(loginName, "Person " + loginName, HASH, Set.of(roles), Instant.now()));
    }

    /** A browser in which a new account with these roles has signed in by the form. */
    public TestBrowser signInAs(Role... roles) {
        Account account = account("p" + UUID.randomUUID().toString().substring(0, 8), roles);
        return signInAs(account.loginName());
    }

    /** A browser in which an existing account has signed in by the form. */
    public TestBrowser signInAs(String loginName) {
        TestBrowser browser = browser();
        int status = browser.post("/sign-in", Map.of("name", loginName, "password", PASSWORD))
                .statusCode();
        if (status != 303) {
            throw new AssertionError("sign-in as " + loginName + " answered " + status);
        }
        return browser;
    }

    @Override
    public void close() {
        application.close();
    }

    private static Application run(String jdbcUrl, String... options) {
        List<String> words =
                new java.util.ArrayList<>(List.of("--port", "0", "--metrics-port", "0", "--pool-size", "6"));
        words.addAll(List.of(options));
        if (!jdbcUrl.isEmpty()) {
            words.addAll(List.of("--url", jdbcUrl));
        }
        Settings settings = Settings.read(Arguments.parse(Settings.OPTIONS, words), Map.of());
        return Application.start(settings, Main.demoSchool());
    }
}

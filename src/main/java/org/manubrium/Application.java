package org.manubrium;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.school.DemoSchool;
import org.manubrium.school.account.Accounts;
import org.manubrium.school.account.DemoAccounts;
import org.manubrium.school.account.Sessions;
import org.manubrium.school.account.SignIn;
import org.manubrium.school.mark.RemarkWorker;
import org.manubrium.security.Passwords;
import org.manubrium.security.Token;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;
import org.manubrium.tables.Reference;
import org.manubrium.tables.TableFiles;
import org.manubrium.tables.Tables;
import org.manubrium.web.Health;
import org.manubrium.web.Routes;
import org.manubrium.web.WebServer;
import org.manubrium.web.account.AccountPages;
import org.manubrium.web.account.DemoEntry;
import org.manubrium.web.account.SignInPages;
import org.manubrium.web.shell.Metrics;
import org.manubrium.web.shell.Shell;
import org.manubrium.web.shell.ShellSettings;

/** The running server and everything it is made of. The one place where its parts are put together. */
final class Application implements AutoCloseable {
    private final Settings settings;
    private final Database database;
    private final Metrics metrics;
    private final Accounts accounts;
    private final RemarkWorker worker;
    private final WebServer server;
    private final AfterOpening rest;

    private Application(
            Settings settings,
            Database database,
            Metrics metrics,
            Accounts accounts,
            RemarkWorker worker,
            WebServer server,
            AfterOpening rest) {
        this.settings = settings;
        this.database = database;
        this.metrics = metrics;
        this.accounts = accounts;
        this.worker = worker;
        this.server = server;
        this.rest = rest;
    }

    /** Opens the database, seeds it if this is a demo, and listens. */
    static Application start(Settings settings, DemoSchool demoSchool) {
        Metrics metrics = Metrics.open(settings.metricsPort());
        try {
            Database database = Database.open(databaseOf(settings), TableFiles.shipped());
            try {
                database.measureWith(metrics.registry());
                return assemble(settings, demoSchool, database, metrics);
            } catch (RuntimeException e) {
                database.close();
                throw e;
            }
        } catch (RuntimeException e) {
            metrics.close();
            throw e;
        }
    }

    int port() {
        return server.port();
    }

    int metricsPort() {
        return metrics.port();
    }

    String address() {
        String host = settings.host().equals("0.0.0.0") ? "localhost" : settings.host();
        return "http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port() + "/";
    }

    /** The one-time link for the first educator, if nobody has an account. */
    Optional<String> firstEducatorLink() {
        return accounts.firstEducatorLink().map(Token::text).map(token -> address() + "first-educator/" + token);
    }

    Database database() {
        return database;
    }

    Accounts accounts() {
        return accounts;
    }

    WebServer server() {
        return server;
    }

    /** Finishes what is under way, then lets go of the database. */
    @Override
    public void close() {
        rest.close();
        server.close();
        worker.close();
        database.close();
        metrics.close();
    }

    private static Application assemble(Settings settings, DemoSchool demoSchool, Database database, Metrics metrics) {
        Reference reference = Tables.shipped();
        Clock clock = Clock.tick(Clock.systemUTC(), Duration.ofNanos(1_000)); // what both databases keep of an instant
        Passwords passwords = new Passwords();
        Sessions sessions = new Sessions(database, clock);
        Accounts accounts = new Accounts(database, passwords, sessions, clock);
        SignIn signIn = new SignIn(database, passwords, sessions, clock);
        DemoAccounts demoAccounts = new DemoAccounts(database, sessions, clock);
        List<Runnable> later = new ArrayList<>();
        if (settings.demo()) {
            demoAccounts.make();
            later.addAll(demoSchool.seed(database));
        }

        Shell shell = new Shell(
                new ShellSettings(settings.secure(), settings.trustProxy(), settings.accessLog()), sessions, metrics);
        MarkingWing marking = MarkingWing.of(database, reference, clock);
        StudentWing students = StudentWing.of(database, reference, marking, clock);
        Routes routes = new Routes(
                new Health(database::answers),
                new SignInPages(shell.view(), shell.cookies(), signIn, sessions, settings.demo()),
                new AccountPages(shell.view(), shell.cookies(), accounts),
                new SchoolRooms(shell, database, reference, clock)
                        .open(accounts, passwords, sessions, marking, students),
                students.rooms(shell.view()),
                Optional.of(new DemoEntry(shell.cookies(), demoAccounts, sessions))
                        .filter(entry -> settings.demo()));
        WebServer server = WebServer.start(settings.host(), settings.port(), shell, routes);
        marking.worker().wake();
        AfterOpening rest = new AfterOpening(later);
        rest.begin();
        return new Application(settings, database, metrics, accounts, marking.worker(), server, rest);
    }

    private static DatabaseSettings databaseOf(Settings settings) {
        if (settings.demo()) {
            return DatabaseSettings.throwAway(settings.poolSize());
        }
        return settings.url()
                .map(url -> DatabaseSettings.at(url, settings.poolSize()))
                .orElseGet(() -> DatabaseSettings.inFolder(DataFolder.ready(settings.data()), settings.poolSize()));
    }
}

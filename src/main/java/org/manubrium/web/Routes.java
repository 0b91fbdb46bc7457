package org.manubrium.web;

import static org.manubrium.web.shell.Access.ANYONE;
import static org.manubrium.web.shell.Access.EDUCATOR;
import static org.manubrium.web.shell.Access.REVIEWER;
import static org.manubrium.web.shell.Access.SIGNED_IN;
import static org.manubrium.web.shell.Access.STUDENT;

import io.javalin.config.RoutesConfig;
import java.util.Optional;
import org.manubrium.web.account.AccountPages;
import org.manubrium.web.account.DemoEntry;
import org.manubrium.web.account.SignInPages;
import org.manubrium.web.shell.StaticFiles;

/** Every address of the server, with who may use it. */
public final class Routes {
    private final StaticFiles files = new StaticFiles();
    private final Home home;
    private final Health health;
    private final SignInPages signIn;
    private final AccountPages accounts;
    private final Optional<DemoEntry> demo;

    public Routes(Home home, Health health, SignInPages signIn, AccountPages accounts, Optional<DemoEntry> demo) {
        this.home = home;
        this.health = health;
        this.signIn = signIn;
        this.accounts = accounts;
        this.demo = demo;
    }

    void into(RoutesConfig routes) {
        routes.get("/static/<path>", files::serve, ANYONE);
        routes.get("/health", health::show, ANYONE);

        routes.get("/", home::enter, ANYONE);
        routes.get("/sign-in", signIn::form, ANYONE);
        routes.post("/sign-in", signIn::signIn, ANYONE);
        routes.post("/sign-out", signIn::signOut, ANYONE);
        demo.ifPresent(entry -> routes.post("/demo/enter", entry::enter, ANYONE));

        routes.get("/first-educator/{token}", accounts::firstEducatorForm, ANYONE);
        routes.post("/first-educator/{token}", accounts::makeFirstEducator, ANYONE);
        routes.get("/account/password", accounts::passwordForm, SIGNED_IN);
        routes.post("/account/password", accounts::changePassword, SIGNED_IN);

        routes.get("/student", home::student, STUDENT);
        routes.get("/educator", home::educator, EDUCATOR);
        routes.get("/cohorts", home::cohorts, EDUCATOR, REVIEWER);
    }
}

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
    private final Health health;
    private final SignInPages signIn;
    private final AccountPages accounts;
    private final SchoolPages school;
    private final StudentRooms students;
    private final Optional<DemoEntry> demo;

    public Routes(
            Health health,
            SignInPages signIn,
            AccountPages accounts,
            SchoolPages school,
            StudentRooms students,
            Optional<DemoEntry> demo) {
        this.health = health;
        this.signIn = signIn;
        this.accounts = accounts;
        this.school = school;
        this.students = students;
        this.demo = demo;
    }

    void into(RoutesConfig routes) {
        routes.get("/static/<path>", files::serve, ANYONE);
        routes.get("/health", health::show, ANYONE);

        routes.get("/", Home::enter, ANYONE);
        routes.get("/sign-in", signIn::form, ANYONE);
        routes.post("/sign-in", signIn::signIn, ANYONE);
        routes.post("/sign-out", signIn::signOut, ANYONE);
        demo.ifPresent(entry -> routes.post("/demo/enter", entry::enter, ANYONE));

        routes.get("/first-educator/{token}", accounts::firstEducatorForm, ANYONE);
        routes.post("/first-educator/{token}", accounts::makeFirstEducator, ANYONE);
        routes.get("/account/password", accounts::passwordForm, SIGNED_IN);
        routes.post("/account/password", accounts::changePassword, SIGNED_IN);

        student(routes);
        cases(routes);
        cohorts(routes);
        review(routes);
    }

    private void student(RoutesConfig routes) {
        routes.get("/student", students.home()::home, STUDENT);
        routes.get("/student/sureness", students.sureness()::show, STUDENT);
        routes.get("/student/signs", students.drill()::show, STUDENT);
        routes.post("/student/signs/{number}", students.drill()::answer, STUDENT);
        routes.get("/partner/{sign}", students.partner()::show, SIGNED_IN);
        routes.post("/attempts", students.home()::start, STUDENT);
        routes.get("/attempts/{id}", students.bedside()::show, STUDENT, EDUCATOR);
        routes.get("/attempts/{id}/manoeuvres/{manoeuvre}", students.bedside()::manoeuvre, STUDENT, EDUCATOR);
        routes.post("/attempts/{id}/events", students.bedside()::take, STUDENT, EDUCATOR);
        routes.get("/attempts/{id}/advice", students.advice()::offered, STUDENT, EDUCATOR);
        routes.post("/attempts/{id}/advice", students.advice()::next, STUDENT, EDUCATOR);
        routes.get("/attempts/{id}/debrief", students.debrief()::show, STUDENT, EDUCATOR);
    }

    private void cases(RoutesConfig routes) {
        routes.get("/educator", school.cases()::desk, EDUCATOR);
        routes.get("/educator/signs", school.signs()::list, EDUCATOR);
        routes.get("/educator/signs/{manoeuvre}", school.signs()::show, EDUCATOR);
        routes.get("/educator/versions/{version}", school.cases()::version, EDUCATOR);
        routes.post("/educator/versions/{version}/try", school.cases()::tryOut, EDUCATOR);
        routes.post("/educator/versions/{version}/revise", school.cases()::revise, EDUCATOR);
        routes.get("/educator/versions/{version}/key", school.keys()::show, EDUCATOR);
        routes.post("/educator/versions/{version}/key/compile", school.keys()::compileAnew, EDUCATOR);
        routes.post("/educator/versions/{version}/key/correct", school.keys()::correct, EDUCATOR);
        routes.get("/educator/drafts/new", school.drafts()::form, EDUCATOR);
        routes.post("/educator/drafts", school.drafts()::begin, EDUCATOR);
        routes.get("/educator/drafts/{draft}", school.drafts()::show, EDUCATOR);
        routes.post("/educator/drafts/{draft}", school.drafts()::save, EDUCATOR);
        routes.post("/educator/drafts/{draft}/try", school.drafts()::tryOut, EDUCATOR);
        routes.post("/educator/drafts/{draft}/put-in-use", school.drafts()::putInUse, EDUCATOR);
        routes.post("/educator/drafts/{draft}/discard", school.drafts()::discard, EDUCATOR);
    }

    private void cohorts(RoutesConfig routes) {
        routes.get("/educator/cohorts", school.cohorts()::list, EDUCATOR);
        routes.post("/educator/cohorts", school.cohorts()::make, EDUCATOR);
        routes.get("/educator/cohorts/{cohort}", school.cohorts()::show, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}", school.cohorts()::change, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/roster", school.rosters()::paste, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/students/{account}/link", school.rosters()::renewLink, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/invitation", school.rosters()::invite, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/invitation/end", school.rosters()::uninvite, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/work", school.work()::set, EDUCATOR);
        routes.get("/educator/cohorts/{cohort}/work/{set}/weights", school.weights()::show, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/work/{set}/weights", school.weights()::set, EDUCATOR);
        routes.get("/educator/cohorts/{cohort}/work/{set}/facts", school.facts()::show, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/work/{set}/facts", school.facts()::confirm, EDUCATOR);
        routes.post(
                "/educator/cohorts/{cohort}/work/{set}/facts/{confirmation}/take-back",
                school.facts()::takeBack,
                EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/work/{set}/closing", school.work()::moveClosing, EDUCATOR);
        routes.post("/educator/cohorts/{cohort}/work/{set}/take-back", school.work()::takeBack, EDUCATOR);

        routes.get("/join/{token}", school.joining()::form, ANYONE);
        routes.post("/join/{token}", school.joining()::join, ANYONE);
        routes.get("/welcome/{token}", school.welcome()::form, ANYONE);
        routes.post("/welcome/{token}", school.welcome()::setPassword, ANYONE);
    }

    private void review(RoutesConfig routes) {
        routes.get("/reviewer", school.review()::list, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}", school.review()::cohort, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/cases/{set}", school.review()::setCase, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/attempts/{attempt}", school.attempt()::show, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/attempts.csv", school.csv()::attempts, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/lines.csv", school.csv()::lines, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/answers.csv", school.csv()::answers, EDUCATOR, REVIEWER);
        routes.get("/reviewer/cohorts/{cohort}/leaderboard.csv", school.csv()::leaderboard, EDUCATOR, REVIEWER);
        routes.get("/student/cohorts/{cohort}/leaderboard", school.leaderboard()::show, STUDENT);
    }
}

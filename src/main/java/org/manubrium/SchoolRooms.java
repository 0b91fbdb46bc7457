package org.manubrium;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import org.manubrium.school.account.Accounts;
import org.manubrium.school.account.PasswordLinks;
import org.manubrium.school.account.Sessions;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Convention;
import org.manubrium.school.cohort.Invitations;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.security.Passwords;
import org.manubrium.store.Database;
import org.manubrium.web.SchoolPages;
import org.manubrium.web.account.WelcomePages;
import org.manubrium.web.cohort.CohortPages;
import org.manubrium.web.cohort.CohortView;
import org.manubrium.web.cohort.JoinPages;
import org.manubrium.web.cohort.RosterPages;
import org.manubrium.web.cohort.SetWorkPages;
import org.manubrium.web.review.ReviewPages;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.Shell;

/** Puts the pages of those who teach together. */
final class SchoolRooms {
    private final Shell shell;
    private final Database database;
    private final Clock clock;
    private final Moments moments = new Moments(ZoneId.systemDefault());

    SchoolRooms(Shell shell, Database database, Clock clock) {
        this.shell = shell;
        this.database = database;
        this.clock = clock;
    }

    SchoolPages open(Accounts accounts, Passwords passwords, Sessions sessions) {
        PasswordLinks links = new PasswordLinks(database, passwords, sessions, clock);
        Cohorts cohorts = new Cohorts(database, List.of(new Convention("harrow", "Harrow form")), clock);
        Rosters rosters = new Rosters(database, links, clock);
        Invitations invitations = new Invitations(database, accounts, clock);
        SetWork work = new SetWork(database, clock);
        CohortView page = new CohortView(shell.view(), cohorts, rosters, work, moments, clock);
        return new SchoolPages(
                new CohortPages(shell.view(), page, cohorts),
                new RosterPages(shell.view(), page, rosters, invitations, shell.addresses()),
                new SetWorkPages(page, work, moments),
                new JoinPages(shell.view(), shell.cookies(), invitations),
                new WelcomePages(shell.view(), shell.cookies(), links),
                new ReviewPages(shell.view(), cohorts));
    }
}

package org.manubrium;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.school.account.Accounts;
import org.manubrium.school.account.PasswordLinks;
import org.manubrium.school.account.Sessions;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.bedside.TabledChoices;
import org.manubrium.school.casedesk.CaseCheck;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.casedesk.Drafts;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Convention;
import org.manubrium.school.cohort.Invitations;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.review.Reviews;
import org.manubrium.school.signdesk.SignDesk;
import org.manubrium.security.Passwords;
import org.manubrium.store.Database;
import org.manubrium.tables.Reference;
import org.manubrium.web.SchoolPages;
import org.manubrium.web.account.WelcomePages;
import org.manubrium.web.cohort.CohortPages;
import org.manubrium.web.cohort.CohortView;
import org.manubrium.web.cohort.FactsPages;
import org.manubrium.web.cohort.JoinPages;
import org.manubrium.web.cohort.RosterPages;
import org.manubrium.web.cohort.SetWorkPages;
import org.manubrium.web.cohort.WeightsPages;
import org.manubrium.web.educator.CasePages;
import org.manubrium.web.educator.DraftPages;
import org.manubrium.web.educator.DraftView;
import org.manubrium.web.educator.KeyPages;
import org.manubrium.web.educator.SignPages;
import org.manubrium.web.review.AttemptPage;
import org.manubrium.web.review.CsvPages;
import org.manubrium.web.review.LeaderboardPage;
import org.manubrium.web.review.ReviewPages;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.Shell;
import org.manubrium.web.shell.View;

/** Puts the pages of those who teach together. */
final class SchoolRooms {
    private final Shell shell;
    private final Database database;
    private final Reference reference;
    private final Clock clock;
    private final Moments moments = new Moments(ZoneId.systemDefault());

    SchoolRooms(Shell shell, Database database, Reference reference, Clock clock) {
        this.shell = shell;
        this.database = database;
        this.reference = reference;
        this.clock = clock;
    }

    SchoolPages open(
            Accounts accounts, Passwords passwords, Sessions sessions, MarkingWing marking, StudentWing students) {
        View view = shell.view();
        PasswordLinks links = new PasswordLinks(database, passwords, sessions, clock);
        Cohorts cohorts = new Cohorts(database, conventions(reference), marking.remarkings(), marking.worker(), clock);
        Rosters rosters = new Rosters(database, links, clock);
        Invitations invitations = new Invitations(database, accounts, clock);
        SetWork work = new SetWork(database, clock);
        CohortView page = new CohortView(view, cohorts, rosters, work, moments, clock);
        CaseCheck check = check(reference);
        CasesInUse cases = new CasesInUse(database, check, clock);
        Drafts drafts = new Drafts(database, clock);
        Reviews reviews = new Reviews(database, clock);
        return new SchoolPages(
                new CasePages(view, drafts, cases, moments),
                new DraftPages(view, new DraftView(view, check, cases, moments), drafts, cases),
                new KeyPages(view, cases, marking.keys(), marking.remarkings(), cohorts, moments),
                new SignPages(view, new SignDesk(reference), choices(reference)),
                new CohortPages(view, page, cohorts),
                new RosterPages(view, page, rosters, invitations, shell.addresses()),
                new SetWorkPages(page, work, moments),
                new WeightsPages(view, page, work, marking.weighing()),
                new FactsPages(view, page, work, marking.facts(), moments, students.citations()),
                new JoinPages(view, shell.cookies(), invitations),
                new WelcomePages(view, shell.cookies(), links),
                new ReviewPages(view, cohorts, reviews, moments),
                new AttemptPage(view, reviews, students.debriefs(), students.debriefView()),
                new CsvPages(reviews),
                new LeaderboardPage(view, reviews));
    }

    /** Reads cases against these tables and compiles their keys from them. */
    static CaseCheck check(Reference reference) {
        CaseKeys keys = new CaseKeys(reference);
        return new CaseCheck(reference, file -> KeyJson.write(keys.of(file)));
    }

    /** What can be done, each sign on its own scale. */
    private static Choices choices(Reference reference) {
        return new TabledChoices(reference, (convention, quantity) -> Optional.empty()).under("");
    }

    static List<Convention> conventions(Reference reference) {
        Conventions known = reference.marking().conventions();
        return known.ids().stream()
                .map(id -> new Convention(id, known.name(id)))
                .toList();
    }
}

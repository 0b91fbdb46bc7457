package org.manubrium.school.student;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.manubrium.school.account.Refused;
import org.manubrium.store.Attempt;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.MarkChange;
import org.manubrium.store.SetCase;
import org.manubrium.store.Stores;
import org.manubrium.store.VersionLine;

/** What a student finds on coming in. */
public final class StudentDesk {
    private final Database database;
    private final Clock clock;

    public StudentDesk(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** What is set to the student's cohorts: what is still open first, each part in the order in which it closes. */
    public List<Assignment> assignments(long account) {
        Instant now = clock.instant();
        return database.inTransaction(stores -> {
            List<Attempt> attempts = stores.attempts().ofStudent(account);
            return stores.setCases().forStudent(account).stream()
                    .filter(set -> !set.opensAt().isAfter(now))
                    .map(set -> assignment(stores, set, attempts, now))
                    .sorted(Comparator.comparing(Assignment::live).reversed())
                    .toList();
        });
    }

    /** The student's cohorts whose leaderboard is on. */
    public List<Cohort> leaderboards(long account) {
        return database.direct(stores -> stores.cohorts().of(account)).stream()
                .filter(Cohort::leaderboardOn)
                .toList();
    }

    /**
     * Begins an attempt at a set case, or goes on with the one that is under way.
     *
     * @throws Refused if it is not set to this student, is closed, or is a station that was sat
     */
    public long start(long setCase, long account) {
        Instant now = clock.instant();
        return database.inTransaction(stores -> {
            SetCase set = stores.setCases()
                    .find(setCase)
                    .filter(s ->
                            stores.cohorts().enrolment(s.cohortId(), account).isPresent())
                    .orElseThrow(() -> new Refused("This case is not set to you, or has been taken back."));
            Assignment assignment = assignment(stores, set, stores.attempts().ofStudent(account), now);
            Optional<Assignment.Try> underWay = assignment.underWay();
            if (underWay.isPresent()) {
                return underWay.get().attempt();
            }
            if (!assignment.canStart()) {
                throw new Refused(
                        assignment.open()
                                ? "A station is sat once."
                                : "This case is closed: it can no longer be begun.");
            }
            return stores.attempts()
                    .start(account, Optional.of(setCase), set.caseVersionId(), now)
                    .id();
        });
    }

    private static Assignment assignment(Stores stores, SetCase set, List<Attempt> attempts, Instant now) {
        Cohort cohort = stores.cohorts().find(set.cohortId()).orElseThrow();
        List<Assignment.Try> tries = attempts.stream()
                .filter(a -> a.setCaseId().equals(Optional.of(set.id())))
                .map(a -> tried(stores, a))
                .toList();
        return new Assignment(
                set.id(),
                title(stores, set.caseVersionId()),
                cohort.name(),
                set.mode() == SetCase.Mode.STATION,
                set.isOpen(now),
                set.opensAt(),
                set.closesAt(),
                tries);
    }

    private static Assignment.Try tried(Stores stores, Attempt attempt) {
        List<MarkChange> marks = stores.marks().changes(attempt.id());
        int last = marks.size() - 1;
        return new Assignment.Try(
                attempt.id(),
                attempt.isHandedIn(),
                last >= 0 ? Optional.of(marks.get(last).total()) : Optional.empty(),
                last >= 1 ? Optional.of(marks.get(last - 1).total()) : Optional.empty());
    }

    private static String title(Stores stores, long version) {
        return stores.cases().line(version).map(VersionLine::title).orElse("");
    }
}

package org.manubrium.school.review;

import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.manubrium.exchange.SheetReader;
import org.manubrium.marking.MarkSheet;
import org.manubrium.store.Attempt;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.Enrolment;
import org.manubrium.store.SetCase;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;
import org.manubrium.store.VersionLine;

/** Looks at cohorts. Changes nothing. */
public final class Reviews {
    private final Database database;
    private final Clock clock;

    public Reviews(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** A cohort with everything it has sat. */
    public Optional<CohortReview> of(long cohort) {
        return database.inTransaction(stores -> stores.cohorts().find(cohort).map(found -> review(stores, found)));
    }

    /** The leaderboard as a student of the cohort may see it: only where the educator has turned it on. */
    public Optional<CohortReview> forStudent(long cohort, long account) {
        return database.inTransaction(stores -> stores.cohorts()
                .find(cohort)
                .filter(Cohort::leaderboardOn)
                .filter(found -> stores.cohorts().enrolment(cohort, account).isPresent())
                .map(found -> review(stores, found)));
    }

    private CohortReview review(Stores stores, Cohort cohort) {
        List<Student> students = stores.cohorts().roster(cohort.id()).stream()
                .map(place -> student(cohort, place))
                .sorted(Comparator.comparing(Student::shownAs))
                .toList();
        List<CaseReview> cases = stores.setCases().of(cohort.id()).stream()
                .map(set -> ofSet(stores, set, students))
                .toList();
        return new CohortReview(cohort, students, cases, clock.instant());
    }

    private static Student student(Cohort cohort, Enrolment place) {
        return new Student(place.accountId(), cohort.pseudonyms() ? place.pseudonym() : place.displayName());
    }

    private static CaseReview ofSet(Stores stores, SetCase set, List<Student> students) {
        VersionLine version = stores.cases().line(set.caseVersionId()).orElseThrow();
        Map<Long, Student> byAccount =
                students.stream().collect(Collectors.toMap(Student::account, Function.identity()));
        Map<Long, MarkSheet> sheets = stores.marks().ofSetCase(set.id()).stream()
                .collect(Collectors.toMap(StoredMark::attemptId, mark -> SheetReader.read(mark.sheet())));
        List<Sat> sat = stores.attempts().ofSetCase(set.id()).stream()
                .flatMap(attempt -> sat(attempt, byAccount, sheets).stream())
                .toList();
        return new CaseReview(set, version.title(), version.version(), students, sat);
    }

    private static Optional<Sat> sat(Attempt attempt, Map<Long, Student> students, Map<Long, MarkSheet> sheets) {
        return Optional.ofNullable(students.get(attempt.accountId()))
                .map(student -> new Sat(student, attempt, Optional.ofNullable(sheets.get(attempt.id()))));
    }
}

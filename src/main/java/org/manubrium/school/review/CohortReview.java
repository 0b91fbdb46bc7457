package org.manubrium.school.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.store.Cohort;

/** A cohort with everything it has sat, as it stood at {@code now}. */
public record CohortReview(Cohort cohort, List<Student> students, List<CaseReview> cases, Instant now) {
    public CohortReview {
        students = List.copyOf(students);
        cases = List.copyOf(cases);
    }

    /** One of its set cases. */
    public Optional<CaseReview> ofSet(long id) {
        return cases.stream().filter(one -> one.set().id() == id).findFirst();
    }

    /** One of its attempts. */
    public Optional<Sat> attempt(long id) {
        return cases.stream()
                .flatMap(one -> one.sat().stream())
                .filter(one -> one.attempt().id() == id)
                .findFirst();
    }

    public Leaderboard leaderboard() {
        List<Map<Long, Double>> totals =
                cases.stream().filter(this::counts).map(CaseReview::firstTotals).toList();
        return Leaderboard.of(students, totals);
    }

    /** Whether a set case is closed, or everyone has handed it in, so that nobody is ahead by being early. */
    public boolean counts(CaseReview one) {
        boolean closed = !now.isBefore(one.set().closesAt());
        boolean all = !students.isEmpty() && one.firsts().size() == students.size();
        return closed || all;
    }
}

package org.manubrium.school.cohort;

import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.store.Enrolment;
import org.manubrium.store.Stores;

/** Puts students into cohorts, within the caller's transaction. */
final class Enrolments {
    private Enrolments() {}

    /** The student's place, made unless it is there. */
    static Enrolment enrol(Stores stores, long cohort, long account) {
        return stores.cohorts().enrolment(cohort, account).orElseGet(() -> add(stores, cohort, account));
    }

    private static Enrolment add(Stores stores, long cohort, long account) {
        Set<String> taken = stores.cohorts().roster(cohort).stream()
                .map(Enrolment::pseudonym)
                .collect(Collectors.toSet());
        stores.cohorts().enrol(cohort, account, Pseudonyms.pick(cohort, account, taken));
        return stores.cohorts().enrolment(cohort, account).orElseThrow();
    }
}

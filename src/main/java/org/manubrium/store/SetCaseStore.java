package org.manubrium.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Cases set to cohorts. */
public final class SetCaseStore {
    private static final String SET_CASE =
            "select s.id, s.cohort_id, s.case_version_id, s.opens_at, s.closes_at, s.mode from set_case s";

    private final Handle handle;

    SetCaseStore(Handle handle) {
        this.handle = handle;
    }

    /** Adds it under a new id, whatever id it carries. */
    public SetCase add(SetCase set) {
        long id = handle.createUpdate("insert into set_case (cohort_id, case_version_id, opens_at, closes_at, mode)"
                        + " values (:cohortId, :caseVersionId, :opensAt, :closesAt, :mode)")
                .bindMethods(set)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    public Optional<SetCase> find(long id) {
        return handle.createQuery(SET_CASE + " where s.id = :id")
                .bind("id", id)
                .mapTo(SetCase.class)
                .findOne();
    }

    /** What is set to a cohort, in the order in which it opens. */
    public List<SetCase> of(long cohort) {
        return handle.createQuery(SET_CASE + " where s.cohort_id = :cohort order by s.opens_at, s.id")
                .bind("cohort", cohort)
                .mapTo(SetCase.class)
                .list();
    }

    /** Everything set to any cohort of this student, in the order in which it closes. */
    public List<SetCase> forStudent(long account) {
        return handle.createQuery(SET_CASE + " join enrolment e on e.cohort_id = s.cohort_id"
                        + " where e.account_id = :account order by s.closes_at, s.id")
                .bind("account", account)
                .mapTo(SetCase.class)
                .list();
    }
}

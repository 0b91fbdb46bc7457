package org.manubrium.store;

import java.time.Instant;
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

    /** Writes the closing time of an existing one. */
    public void setClosing(long id, Instant closesAt) {
        handle.execute("update set_case set closes_at = ? where id = ?", closesAt, id);
    }

    /** How its domains are weighed, if not as tabled. */
    public Optional<String> weights(long id) {
        return handle.createQuery("select weights from set_case where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .findOne();
    }

    public void setWeights(long id, String weights) {
        handle.execute("update set_case set weights = ? where id = ?", weights, id);
    }

    /** Takes it away; there must be no attempt at it. */
    public void remove(long id) {
        handle.execute("delete from set_case where id = ?", id);
    }

    /** Everything that is sat as a station, in any cohort. */
    public List<SetCase> stations() {
        return handle.createQuery(SET_CASE + " where s.mode = 'STATION' order by s.id")
                .mapTo(SetCase.class)
                .list();
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

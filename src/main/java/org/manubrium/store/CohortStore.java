package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Cohorts and who is in them. */
public final class CohortStore {
    private static final String COHORT =
            "select c.id, c.name, c.convention, c.leaderboard_on, c.pseudonyms, c.created_by, c.created_at from cohort c";
    private static final String ENROLMENT = "select e.cohort_id, e.account_id, a.display_name, e.pseudonym"
            + " from enrolment e join account a on a.id = e.account_id";

    private final Handle handle;

    CohortStore(Handle handle) {
        this.handle = handle;
    }

    /** A cohort with its leaderboard off and pseudonyms on. */
    public Cohort add(String name, String convention, Optional<Long> createdBy, Instant now) {
        long id = handle.createUpdate("insert into cohort (name, convention, created_by, created_at)"
                        + " values (:name, :convention, :by, :now)")
                .bind("name", name)
                .bind("convention", convention)
                .bind("by", createdBy)
                .bind("now", now)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    /** Writes name, convention, leaderboard and pseudonyms of an existing cohort. */
    public void set(Cohort cohort) {
        handle.createUpdate("update cohort set name = :name, convention = :convention,"
                        + " leaderboard_on = :leaderboardOn, pseudonyms = :pseudonyms where id = :id")
                .bindMethods(cohort)
                .execute();
    }

    public Optional<Cohort> find(long id) {
        return handle.createQuery(COHORT + " where c.id = :id")
                .bind("id", id)
                .mapTo(Cohort.class)
                .findOne();
    }

    /** Every cohort, the newest first. */
    public List<Cohort> all() {
        return handle.createQuery(COHORT + " order by c.created_at desc, c.id desc")
                .mapTo(Cohort.class)
                .list();
    }

    /** The cohorts one student is in, the newest first. */
    public List<Cohort> of(long account) {
        return handle.createQuery(COHORT + " join enrolment e on e.cohort_id = c.id where e.account_id = :account"
                        + " order by c.created_at desc, c.id desc")
                .bind("account", account)
                .mapTo(Cohort.class)
                .list();
    }

    /** Puts a student in a cohort. Being there already, or a pseudonym that is taken, is a duplicate. */
    public void enrol(long cohort, long account, String pseudonym) {
        handle.execute(
                "insert into enrolment (cohort_id, account_id, pseudonym) values (?, ?, ?)",
                cohort,
                account,
                pseudonym);
    }

    public Optional<Enrolment> enrolment(long cohort, long account) {
        return handle.createQuery(ENROLMENT + " where e.cohort_id = :cohort and e.account_id = :account")
                .bind("cohort", cohort)
                .bind("account", account)
                .mapTo(Enrolment.class)
                .findOne();
    }

    /** Who is in a cohort, by name. */
    public List<Enrolment> roster(long cohort) {
        return handle.createQuery(ENROLMENT + " where e.cohort_id = :cohort order by a.display_name, a.id")
                .bind("cohort", cohort)
                .mapTo(Enrolment.class)
                .list();
    }
}

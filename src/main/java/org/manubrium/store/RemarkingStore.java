package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Rounds of marking again, and how far each has come. */
public final class RemarkingStore {
    private static final String ROUND = "select id, case_version_id, set_case_id, reason, asked_by, asked_at, reached,"
            + " changed, unchanged, failed, finished_at from remarking";

    private final Handle handle;

    RemarkingStore(Handle handle) {
        this.handle = handle;
    }

    /** Adds it under a new id, whatever id it carries. */
    public Remarking add(Remarking asked) {
        long id = handle.createUpdate("insert into remarking (case_version_id, set_case_id, reason, asked_by, asked_at)"
                        + " values (:caseVersionId, :setCaseId, :reason, :askedBy, :askedAt)")
                .bindMethods(asked)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    public Optional<Remarking> find(long id) {
        return handle.createQuery(ROUND + " where id = :id")
                .bind("id", id)
                .mapTo(Remarking.class)
                .findOne();
    }

    /** The rounds that are not finished, the oldest first. */
    public List<Long> unfinished() {
        return handle.createQuery("select id from remarking where finished_at is null order by id")
                .mapTo(Long.class)
                .list();
    }

    /** Every round over a version, the newest first. */
    public List<Remarking> of(long caseVersion) {
        return handle.createQuery(ROUND + " where case_version_id = :version order by id desc")
                .bind("version", caseVersion)
                .mapTo(Remarking.class)
                .list();
    }

    /**
     * The next attempts of a round, handed in or not, in the order of their ids.
     *
     * @param after those with a greater id only
     */
    public List<Attempt> page(Remarking round, long after, int size) {
        String inSet = round.setCaseId().isPresent() ? " and set_case_id = :set" : "";
        return handle.createQuery(AttemptStore.ATTEMPT + " where case_version_id = :version and id > :reached" + inSet
                        + " order by id limit :size")
                .bind("version", round.caseVersionId())
                .bind("reached", Math.max(after, round.reached()))
                .bind("set", round.setCaseId().orElse(0L))
                .bind("size", size)
                .mapTo(Attempt.class)
                .list();
    }

    /**
     * Takes an attempt of a round, and holds the round until the transaction ends.
     *
     * @return false if somebody else has taken it, or a later one
     */
    public boolean take(long round, long attempt, Remarking.Outcome outcome) {
        return handle.execute(
                        "update remarking set reached = ?, changed = changed + ?, unchanged = unchanged + ?,"
                                + " failed = failed + ? where id = ? and reached < ? and finished_at is null",
                        attempt,
                        outcome == Remarking.Outcome.CHANGED ? 1 : 0,
                        outcome == Remarking.Outcome.UNCHANGED ? 1 : 0,
                        outcome == Remarking.Outcome.FAILED ? 1 : 0,
                        round,
                        attempt)
                == 1;
    }

    /** Ends a round, unless it has ended. */
    public void finish(long id, Instant now) {
        handle.execute("update remarking set finished_at = ? where id = ? and finished_at is null", now, id);
    }
}

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

    /** The round, held until the transaction ends: whoever takes its next attempt holds it first. */
    public Optional<Remarking> lock(long id) {
        return handle.createQuery(ROUND + " where id = :id for update")
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

    /** The next attempt of a held round, held too, whether it is handed in or not. */
    public Optional<Attempt> next(Remarking round) {
        String inSet = round.setCaseId().isPresent() ? " and set_case_id = :set" : "";
        return handle.createQuery(AttemptStore.ATTEMPT + " where case_version_id = :version and id > :reached" + inSet
                        + " order by id limit 1 for update")
                .bind("version", round.caseVersionId())
                .bind("reached", round.reached())
                .bind("set", round.setCaseId().orElse(0L))
                .mapTo(Attempt.class)
                .findOne();
    }

    /** Writes how far a held round has come. */
    public void reach(Remarking round) {
        handle.execute(
                "update remarking set reached = ?, changed = ?, unchanged = ?, failed = ? where id = ?",
                round.reached(),
                round.changed(),
                round.unchanged(),
                round.failed(),
                round.id());
    }

    public void finish(long id, Instant now) {
        handle.execute("update remarking set finished_at = ? where id = ?", now, id);
    }
}

package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Attempts, without their events. */
public final class AttemptStore {
    static final String ATTEMPT = "select id, account_id, set_case_id, case_version_id, number,"
            + " is_first, trial, started_at, handed_in_at from attempt";

    private final Handle handle;

    AttemptStore(Handle handle) {
        this.handle = handle;
    }

    /**
     * Starts the next attempt of this student at this case version. It is a first attempt if it is the first of its set
     * case, or, outside any cohort, the first of all. Two at once collide and one of them runs again.
     */
    public Attempt start(long account, Optional<Long> setCase, long caseVersion, Instant now) {
        boolean first = of(account, caseVersion).stream()
                .filter(attempt -> !attempt.trial())
                .noneMatch(attempt -> setCase.isEmpty() || attempt.setCaseId().equals(setCase));
        return add(account, setCase, caseVersion, first, false, now);
    }

    /** Starts an educator's own try at a case version, which is never a first attempt. */
    public Attempt startTrial(long account, long caseVersion, Instant now) {
        return add(account, Optional.empty(), caseVersion, false, true, now);
    }

    private Attempt add(
            long account, Optional<Long> setCase, long caseVersion, boolean first, boolean trial, Instant now) {
        int number = of(account, caseVersion).stream()
                        .mapToInt(Attempt::number)
                        .max()
                        .orElse(0)
                + 1;
        long id = handle.createUpdate("insert into attempt"
                        + " (account_id, set_case_id, case_version_id, number, is_first, trial, started_at)"
                        + " values (:account, :set, :version, :number, :first, :trial, :now)")
                .bind("account", account)
                .bind("set", setCase)
                .bind("version", caseVersion)
                .bind("number", number)
                .bind("first", first)
                .bind("trial", trial)
                .bind("now", now)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    public Optional<Attempt> find(long id) {
        return handle.createQuery(ATTEMPT + " where id = :id")
                .bind("id", id)
                .mapTo(Attempt.class)
                .findOne();
    }

    /** The attempt, held until the transaction ends: whoever appends to it or hands it in takes it first. */
    public Optional<Attempt> lock(long id) {
        return handle.createQuery(ATTEMPT + " where id = :id for update")
                .bind("id", id)
                .mapTo(Attempt.class)
                .findOne();
    }

    /** One student's attempts at one case version, in order. */
    public List<Attempt> of(long account, long caseVersion) {
        return handle.createQuery(
                        ATTEMPT + " where account_id = :account and case_version_id = :version order by number")
                .bind("account", account)
                .bind("version", caseVersion)
                .mapTo(Attempt.class)
                .list();
    }

    /** Everything one student has begun, the newest first. */
    public List<Attempt> ofStudent(long account) {
        return handle.createQuery(ATTEMPT + " where account_id = :account order by started_at desc, id desc")
                .bind("account", account)
                .mapTo(Attempt.class)
                .list();
    }

    /** Every attempt at one set case, by student and number. */
    public List<Attempt> ofSetCase(long setCase) {
        return handle.createQuery(ATTEMPT + " where set_case_id = :set order by account_id, number")
                .bind("set", setCase)
                .mapTo(Attempt.class)
                .list();
    }

    /** Every attempt at one case version, for marking again. */
    public List<Attempt> ofVersion(long caseVersion) {
        return handle.createQuery(ATTEMPT + " where case_version_id = :version order by id")
                .bind("version", caseVersion)
                .mapTo(Attempt.class)
                .list();
    }

    /** Hands it in. False if that was done before: of two at once, one gets true. */
    public boolean handIn(long id, Instant now) {
        return handle.execute("update attempt set handed_in_at = ? where id = ? and handed_in_at is null", now, id)
                == 1;
    }
}

package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.EmptyHandling;

/** Marks. A new one supersedes the one before and leaves it there. */
public final class MarkStore {
    private static final String MARK = "select m.id, m.attempt_id, m.convention, m.total, m.sheet, m.made_at,"
            + " m.superseded, m.remarking_id from mark m";

    private final Handle handle;

    MarkStore(Handle handle) {
        this.handle = handle;
    }

    /** Gives an attempt its mark when it is handed in, superseding any before. */
    public StoredMark add(long attempt, String convention, double total, String sheet, Instant now) {
        add(new StoredMark(0, attempt, convention, total, sheet, now, false, Optional.empty()));
        return current(attempt).orElseThrow();
    }

    /** Gives an attempt a mark, under a new id and superseding any before. Bound by hand: there may be thousands. */
    public int add(StoredMark mark) {
        handle.execute("update mark set superseded = true where attempt_id = ? and not superseded", mark.attemptId());
        return handle.execute(
                "insert into mark (attempt_id, convention, total, sheet, made_at, remarking_id) values (?, ?, ?, ?, ?, ?)",
                mark.attemptId(),
                mark.convention(),
                mark.total(),
                mark.sheet(),
                mark.madeAt(),
                mark.remarkingId());
    }

    /** The mark that counts. */
    public Optional<StoredMark> current(long attempt) {
        return handle.createQuery(
                        MARK + " where m.attempt_id = :attempt and not m.superseded order by m.id desc limit 1")
                .bind("attempt", attempt)
                .mapTo(StoredMark.class)
                .findOne();
    }

    /** The marks that count of several attempts. */
    public List<StoredMark> current(List<Long> attempts) {
        return handle.createQuery(MARK + " where m.attempt_id in (<attempts>) and not m.superseded")
                .bindList(EmptyHandling.NULL_KEYWORD, "attempts", attempts)
                .mapTo(StoredMark.class)
                .list();
    }

    /** Every mark an attempt was ever given, the newest first. */
    public List<StoredMark> history(long attempt) {
        return handle.createQuery(MARK + " where m.attempt_id = :attempt order by m.id desc")
                .bind("attempt", attempt)
                .mapTo(StoredMark.class)
                .list();
    }

    /** What an attempt was marked, and why it was marked again, the first mark first. */
    public List<MarkChange> changes(long attempt) {
        return handle.createQuery("select m.total, m.convention, m.made_at, coalesce(r.reason, '') as reason,"
                        + " a.display_name as who from mark m left join remarking r on r.id = m.remarking_id"
                        + " left join account a on a.id = r.asked_by where m.attempt_id = :attempt order by m.id")
                .bind("attempt", attempt)
                .mapTo(MarkChange.class)
                .list();
    }

    /** The marks that count of every attempt at one set case. */
    public List<StoredMark> ofSetCase(long setCase) {
        return handle.createQuery(MARK + " join attempt a on a.id = m.attempt_id"
                        + " where a.set_case_id = :set and not m.superseded order by m.attempt_id")
                .bind("set", setCase)
                .mapTo(StoredMark.class)
                .list();
    }
}

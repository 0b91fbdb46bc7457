package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** What educators have confirmed of the reference tables. They are added and taken back, never deleted. */
public final class ConfirmationStore {
    private static final String CONFIRMATION = "select id, row_name, fact, reason, made_by, made_at, taken_back_by,"
            + " taken_back_at, taken_back_reason from confirmation";

    private final Handle handle;

    ConfirmationStore(Handle handle) {
        this.handle = handle;
    }

    /** Adds it under a new id, whatever id it carries. */
    public Confirmation add(Confirmation made) {
        long id = handle.createUpdate("insert into confirmation (row_name, fact, reason, made_by, made_at)"
                        + " values (:rowName, :fact, :reason, :madeBy, :madeAt)")
                .bindMethods(made)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    public Optional<Confirmation> find(long id) {
        return handle.createQuery(CONFIRMATION + " where id = :id")
                .bind("id", id)
                .mapTo(Confirmation.class)
                .findOne();
    }

    /** The names of the rows whose confirmation is in force. */
    public Set<String> inForce() {
        return handle.createQuery("select distinct row_name from confirmation where taken_back_at is null")
                .mapTo(String.class)
                .set();
    }

    /** Every confirmation of every row, taken back or not, the newest first. */
    public List<Confirmation> all() {
        return handle.createQuery(CONFIRMATION + " order by id desc")
                .mapTo(Confirmation.class)
                .list();
    }

    /** Takes one back that is in force; returns whether it was. */
    public boolean takeBack(long id, long by, Instant now, String reason) {
        return handle.execute(
                        "update confirmation set taken_back_by = ?, taken_back_at = ?, taken_back_reason = ?"
                                + " where id = ? and taken_back_at is null",
                        by,
                        now,
                        reason,
                        id)
                == 1;
    }
}

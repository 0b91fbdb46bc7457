package org.manubrium.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.manubrium.security.ThrottlePolicy.Counter;

/** Counters of attempts that did not end well, one row a subject. */
public final class ThrottleStore {
    private final Handle handle;

    ThrottleStore(Handle handle) {
        this.handle = handle;
    }

    /** The counter, held until the transaction ends so that two attempts at once are counted as two. */
    public Optional<Counter> lock(String subject) {
        return handle.createQuery(
                        "select failures, window_started_at from throttle where subject = :subject for update")
                .bind("subject", subject)
                .map((row, context) -> new Counter(
                        row.getInt("failures"),
                        row.getObject("window_started_at", OffsetDateTime.class).toInstant()))
                .findOne();
    }

    public void add(String subject, Counter counter) {
        handle.execute(
                "insert into throttle (subject, failures, window_started_at) values (?, ?, ?)",
                subject,
                counter.failures(),
                counter.startedAt());
    }

    public void set(String subject, Counter counter) {
        handle.execute(
                "update throttle set failures = ?, window_started_at = ? where subject = ?",
                counter.failures(),
                counter.startedAt(),
                subject);
    }

    public void clear(String subject) {
        handle.execute("delete from throttle where subject = ?", subject);
    }

    /** Forgets counters whose window began before the given time. */
    public int removeOlderThan(Instant time) {
        return handle.execute("delete from throttle where window_started_at < ?", time);
    }
}

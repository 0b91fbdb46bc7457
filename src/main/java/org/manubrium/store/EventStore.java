package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.EmptyHandling;

/** The events of attempts. They are added, never changed. */
public final class EventStore {
    private static final String EVENT =
            "select attempt_id, seq, client_key, type, happened_at, bedside_seconds, position, body, shown from event";

    private final Handle handle;

    EventStore(Handle handle) {
        this.handle = handle;
    }

    /**
     * Appends an event, within a transaction. The attempt's row is held while its number is chosen, so that two tabs, or
     * two servers, both succeed with different numbers. The same client key again, even after the hand-in, finds what
     * is stored.
     */
    public Appended append(NewEvent event) {
        return new AttemptStore(handle)
                .lock(event.attemptId())
                .map(attempt -> appendTo(attempt, event))
                .orElseGet(() -> new Appended.NoAttempt(event.attemptId()));
    }

    private Appended appendTo(Attempt locked, NewEvent event) {
        Optional<StoredEvent> before = find(event.attemptId(), event.clientKey());
        if (before.isPresent()) {
            return new Appended.Repeated(before.get());
        }
        if (locked.isHandedIn()) {
            return new Appended.HandedIn(locked);
        }
        StoredEvent stored = event.numbered(count(event.attemptId()) + 1);
        insert(stored);
        return new Appended.Added(stored);
    }

    /**
     * Adds the event that follows another, or the first. For those who hold the attempt's row, know that it is open and
     * that the client key is new; {@link #append} finds all that out by itself.
     */
    public StoredEvent addAfter(Optional<StoredEvent> last, NewEvent event) {
        StoredEvent stored = event.numbered(last.map(StoredEvent::seq).orElse(0) + 1);
        insert(stored);
        return stored;
    }

    /** The event with this client key. */
    public Optional<StoredEvent> find(long attempt, String clientKey) {
        return handle.createQuery(EVENT + " where attempt_id = :attempt and client_key = :clientKey")
                .bind("attempt", attempt)
                .bind("clientKey", clientKey)
                .mapTo(StoredEvent.class)
                .findOne();
    }

    /** The newest event of an attempt. */
    public Optional<StoredEvent> last(long attempt) {
        return handle.createQuery(EVENT + " where attempt_id = :attempt order by seq desc limit 1")
                .bind("attempt", attempt)
                .mapTo(StoredEvent.class)
                .findOne();
    }

    /** All events of an attempt in the order in which they were taken. */
    public List<StoredEvent> of(long attempt) {
        return handle.createQuery(EVENT + " where attempt_id = :attempt order by seq")
                .bind("attempt", attempt)
                .mapTo(StoredEvent.class)
                .list();
    }

    /** What marking reads of an attempt: its events in order, without what was shown and the time of day. */
    public List<StoredEvent> done(long attempt) {
        return done(List.of(attempt));
    }

    /** The same of several attempts, one attempt after the other. Mapped by hand: there may be thousands. */
    public List<StoredEvent> done(List<Long> attempts) {
        return handle.createQuery("select attempt_id, seq, client_key, type, bedside_seconds, position, body from event"
                        + " where attempt_id in (<attempts>) order by attempt_id, seq")
                .bindList(EmptyHandling.NULL_KEYWORD, "attempts", attempts)
                .map((row, context) -> new StoredEvent(
                        row.getLong(1),
                        row.getInt(2),
                        row.getString(3),
                        row.getString(4),
                        Instant.EPOCH,
                        row.getDouble(5),
                        row.getString(6),
                        row.getString(7),
                        ""))
                .list();
    }

    private int count(long attempt) {
        return handle.createQuery("select coalesce(max(seq), 0) from event where attempt_id = :attempt")
                .bind("attempt", attempt)
                .mapTo(Integer.class)
                .one();
    }

    private void insert(StoredEvent event) {
        handle.createUpdate(
                        "insert into event"
                                + " (attempt_id, seq, client_key, type, happened_at, bedside_seconds, position, body, shown)"
                                + " values (:attemptId, :seq, :clientKey, :type, :happenedAt, :bedsideSeconds, :position, :body, :shown)")
                .bindMethods(event)
                .execute();
    }
}

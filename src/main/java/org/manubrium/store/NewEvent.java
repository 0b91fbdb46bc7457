package org.manubrium.store;

import java.time.Instant;

/** An event to be stored; the fields are those of {@link StoredEvent}. */
public record NewEvent(
        long attemptId,
        String clientKey,
        String type,
        Instant happenedAt,
        double bedsideSeconds,
        String position,
        String body,
        String shown) {
    StoredEvent numbered(int seq) {
        return new StoredEvent(attemptId, seq, clientKey, type, happenedAt, bedsideSeconds, position, body, shown);
    }
}

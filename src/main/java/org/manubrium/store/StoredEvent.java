package org.manubrium.store;

import java.time.Instant;

/**
 * One event of an attempt as it was taken.
 *
 * @param seq 1, 2, 3 … in the order in which the server took them
 * @param clientKey the browser's own key, unique in its attempt
 * @param bedsideSeconds simulated time spent before it began
 * @param position the patient's position when it began
 * @param body the event as the client sent it, JSON
 * @param shown what the server showed for it, JSON; "" for events that show nothing
 */
public record StoredEvent(
        long attemptId,
        int seq,
        String clientKey,
        String type,
        Instant happenedAt,
        double bedsideSeconds,
        String position,
        String body,
        String shown) {}

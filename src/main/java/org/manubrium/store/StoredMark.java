package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A mark as it was given.
 *
 * @param total per cent
 * @param sheet the whole mark sheet, JSON
 * @param superseded whether the attempt has been marked again since
 * @param remarkingId the round in which it was given; empty if it was given when the attempt was handed in
 */
public record StoredMark(
        long id,
        long attemptId,
        String convention,
        double total,
        String sheet,
        Instant madeAt,
        boolean superseded,
        Optional<Long> remarkingId) {}

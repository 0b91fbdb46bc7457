package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * Students taught together.
 *
 * @param convention the teaching convention they are marked under
 */
public record Cohort(
        long id,
        String name,
        String convention,
        boolean leaderboardOn,
        boolean pseudonyms,
        Optional<Long> createdBy,
        Instant createdAt) {}

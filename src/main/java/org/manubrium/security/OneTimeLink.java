package org.manubrium.security;

import java.time.Instant;
import java.util.Optional;

/**
 * A link that works once, until it expires.
 *
 * @param accountId whose password it sets; empty for the first educator, who has no account yet
 */
public record OneTimeLink(
        String tokenHash, Purpose purpose, Optional<Long> accountId, Instant createdAt, Instant expiresAt) {
    /** What following the link allows. */
    public enum Purpose {
        FIRST_EDUCATOR,
        SET_PASSWORD
    }
}

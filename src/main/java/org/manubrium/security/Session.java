package org.manubrium.security;

import java.time.Instant;

/**
 * One browser that has signed in.
 *
 * @param tokenHash SHA-256 of the cookie, in hex
 * @param csrfToken what every form of this session sends back
 */
public record Session(
        String tokenHash,
        String csrfToken,
        Account account,
        Instant createdAt,
        Instant expiresAt,
        Instant lastSeenAt) {}

package org.manubrium.store;

import java.time.Instant;

/** A link with which students join a cohort, as often as it is followed, until it expires. */
public record Invitation(String tokenHash, long cohortId, Instant createdAt, Instant expiresAt) {}

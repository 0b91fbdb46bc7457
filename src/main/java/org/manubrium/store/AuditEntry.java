package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * Something worth being able to prove later.
 *
 * @param action a word with hyphens, such as {@code account-made}
 * @param accountId who did it, if anyone had signed in
 */
public record AuditEntry(Instant happenedAt, Optional<Long> accountId, String action, String detail) {}

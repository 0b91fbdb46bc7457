package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * One mark of an attempt among all it was ever given.
 *
 * @param reason why it was marked again, and {@code who} asked for it; blank and empty for the first
 */
public record MarkChange(double total, String convention, Instant madeAt, String reason, Optional<String> who) {}

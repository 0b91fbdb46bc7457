package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * An educator's word that a row of the reference tables is right, as it read then.
 *
 * @param rowName as the keys name the row
 * @param fact what the row said, in words
 * @param takenBackAt empty while it is in force
 */
public record Confirmation(
        long id,
        String rowName,
        String fact,
        String reason,
        Optional<Long> madeBy,
        Instant madeAt,
        Optional<Long> takenBackBy,
        Optional<Instant> takenBackAt,
        Optional<String> takenBackReason) {

    /** One that nobody has taken back. */
    public static Confirmation made(String rowName, String fact, String reason, long by, Instant now) {
        return new Confirmation(
                0, rowName, fact, reason, Optional.of(by), now, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public boolean isInForce() {
        return takenBackAt.isEmpty();
    }
}

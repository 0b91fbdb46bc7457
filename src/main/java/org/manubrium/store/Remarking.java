package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A round of marking again.
 *
 * @param setCaseId empty for every attempt at the version
 * @param reached every attempt up to this id is done
 * @param changed how many have a new mark; {@code failed} kept their old one because they could not be marked
 */
public record Remarking(
        long id,
        long caseVersionId,
        Optional<Long> setCaseId,
        String reason,
        Optional<Long> askedBy,
        Instant askedAt,
        long reached,
        int changed,
        int unchanged,
        int failed,
        Optional<Instant> finishedAt) {

    /** A round that nobody has begun. */
    public static Remarking asked(
            long caseVersion, Optional<Long> setCase, String reason, Optional<Long> by, Instant now) {
        return new Remarking(0, caseVersion, setCase, reason, by, now, 0, 0, 0, 0, Optional.empty());
    }

    public boolean isFinished() {
        return finishedAt.isPresent();
    }

    /** The same, one attempt further on. */
    public Remarking past(long attempt, int changedBy, int unchangedBy, int failedBy) {
        return new Remarking(
                id,
                caseVersionId,
                setCaseId,
                reason,
                askedBy,
                askedAt,
                attempt,
                changed + changedBy,
                unchanged + unchangedBy,
                failed + failedBy,
                finishedAt);
    }
}

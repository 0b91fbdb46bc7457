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

    /** What became of one attempt. */
    public enum Outcome {
        /** It is not handed in, and will be marked when it is. */
        OPEN,
        CHANGED,
        UNCHANGED,
        /** It could not be marked and keeps the mark it has. */
        FAILED
    }
}

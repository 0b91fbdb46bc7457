package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * One student's encounter with one case version.
 *
 * @param setCaseId empty for practice outside any cohort
 * @param number 1, 2, 3 … of this student at this case version
 * @param isFirst whether it is the one that a leaderboard counts
 * @param trial an educator trying a case: counted nowhere
 */
public record Attempt(
        long id,
        long accountId,
        Optional<Long> setCaseId,
        long caseVersionId,
        int number,
        boolean isFirst,
        boolean trial,
        Instant startedAt,
        Optional<Instant> handedInAt) {
    public boolean isHandedIn() {
        return handedInAt.isPresent();
    }
}

package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A key that replaces the one a case version was put in use with.
 *
 * @param compiledKey the whole key, JSON
 * @param tablesHash hash of the reference tables it was compiled from
 * @param what what was changed, in a sentence
 * @param reason why, in the educator's words
 */
public record KeyCorrection(
        long id,
        long caseVersionId,
        String compiledKey,
        String tablesHash,
        String what,
        String reason,
        Optional<Long> madeBy,
        Instant madeAt) {}

package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A case as it was put in use: text and key never change.
 *
 * @param version 1, 2, 3 … of its case
 * @param compiledKey the frozen key, JSON
 * @param tablesHash hash of the reference tables it was compiled from
 * @param publishedBy empty for the cases that come with the programme
 */
public record CaseVersion(
        long id,
        long caseId,
        int version,
        String yaml,
        String compiledKey,
        String tablesHash,
        Optional<Long> publishedBy,
        Instant publishedAt) {}

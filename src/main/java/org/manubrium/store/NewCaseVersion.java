package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/** What is to become the next version of a case. */
public record NewCaseVersion(
        long caseId,
        String yaml,
        String compiledKey,
        String tablesHash,
        Optional<Long> publishedBy,
        Instant publishedAt) {}

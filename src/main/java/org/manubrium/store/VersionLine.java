package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/** A case version without its text and its key, which is a megabyte and more. */
public record VersionLine(
        long id, long caseId, String title, int version, Optional<Long> publishedBy, Instant publishedAt) {}

package org.manubrium.store;

import java.time.Instant;

/** A case being written; only its owner sees it. */
public record CaseDraft(long id, long ownerId, String title, String yaml, Instant updatedAt) {}

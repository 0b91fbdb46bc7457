package org.manubrium.store;

import java.time.Instant;

/**
 * A mark as it was given.
 *
 * @param total per cent
 * @param sheet the whole mark sheet, JSON
 * @param superseded whether the attempt has been marked again since
 */
public record StoredMark(
        long id, long attemptId, String convention, double total, String sheet, Instant madeAt, boolean superseded) {}

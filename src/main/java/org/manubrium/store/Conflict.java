package org.manubrium.store;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Why a transaction failed, as far as running it again may help. The SQL states are the same in H2 and
 * PostgreSQL, but for a missing row, which is 23506 in H2. */
enum Conflict {
    NONE,
    /** Two transactions waited for one another, or could not be put in order. */
    DEADLOCK,
    /** A row with the same unique values came first. */
    DUPLICATE,
    /** A row that was referred to went away, or one that was to go away has just been referred to. */
    REFERENCE;

    static Conflict in(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getSQLState() != null) {
                return of(sql.getSQLState());
            }
        }
        return NONE;
    }

    private static Conflict of(String sqlState) {
        return switch (sqlState) {
            case "23505" -> DUPLICATE;
            case "23503", "23506" -> REFERENCE;
            case "40001", "40P01" -> DEADLOCK;
            default -> NONE;
        };
    }
}

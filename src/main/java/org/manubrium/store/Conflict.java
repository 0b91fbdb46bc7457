package org.manubrium.store;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Why a transaction failed, as far as running it again may help. The SQL states are the same in H2 and PostgreSQL. */
enum Conflict {
    NONE,
    /** Two transactions waited for one another, or could not be put in order. */
    DEADLOCK,
    /** A row with the same unique values came first. */
    DUPLICATE;

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
            case "40001", "40P01" -> DEADLOCK;
            default -> NONE;
        };
    }
}

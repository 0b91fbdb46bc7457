package org.manubrium.store;

/** A row with these unique values is there already: the caller's input, not a fault of the database. */
public final class DuplicateException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    DuplicateException(Throwable cause) {
        super("a row with the same unique values is there already", cause);
    }
}

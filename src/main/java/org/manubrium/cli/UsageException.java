package org.manubrium.cli;

/** The command line makes no sense; the message says where, naming what was written. */
public final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UsageException(String message) {
        super(message);
    }
}

package org.manubrium.anatomy;

/** A text that names no site; the message says what was found and what was expected. */
public final class UnknownSite extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnknownSite(String message) {
        super(message);
    }
}

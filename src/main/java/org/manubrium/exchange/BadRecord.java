package org.manubrium.exchange;

/** A record from outside that cannot be read; the message names the field, what was expected and what was found. */
public final class BadRecord extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    /** @param expected what should stand there; {@code found} what does, in words */
    public BadRecord(String field, String expected, String found) {
        super(field + ": expected " + expected + ", found " + found);
        this.field = field;
    }

    /** The same fault, said of a field further out. */
    BadRecord(String outer, BadRecord inner) {
        super(outer + ", " + inner.getMessage(), inner);
        this.field = outer + ", " + inner.field;
    }

    /** The field that is at fault, as "reading.value". */
    public String field() {
        return field;
    }
}

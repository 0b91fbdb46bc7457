package org.manubrium.marking.correction;

/** A correction that says nothing a key could hold; the message is a sentence for whoever wrote it. */
public final class BadCorrection extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadCorrection(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}

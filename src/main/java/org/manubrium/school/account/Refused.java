package org.manubrium.school.account;

/** Something a person asked for that will not do; the message is a sentence for that person. */
public final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Refused(String sentence) {
        super(sentence);
    }

    public Refused(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** The sentence to show. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}

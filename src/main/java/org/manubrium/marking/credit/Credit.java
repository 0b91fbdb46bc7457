package org.manubrium.marking.credit;

/** What an answer earns, 0..1, and why, in a sentence for the student. */
public record Credit(double amount, String why) {
    public Credit {
        if (!(amount >= 0 && amount <= 1)) {
            throw new IllegalArgumentException("credit must lie in 0..1, found " + amount);
        }
    }

    public static Credit full(String why) {
        return new Credit(1, why);
    }

    public static Credit none(String why) {
        return new Credit(0, why);
    }
}

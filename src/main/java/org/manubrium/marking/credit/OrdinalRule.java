package org.manubrium.marking.credit;

import org.manubrium.marking.key.ReadingKey.ScaleKey;

/**
 * A level of a scale: exact 1, one level off 1/2, else 0; and 0 for a level on the other side of the border between what
 * healthy people show and what they do not. On a scale without an order only the exact word counts.
 */
public final class OrdinalRule {
    private static final double ONE_OFF = 0.5;

    private OrdinalRule() {}

    public static Credit credit(String given, ScaleKey key) {
        int at = key.codes().indexOf(given);
        if (at < 0) {
            return Credit.none("\"" + given + "\" is no level of " + key.name() + ".");
        }
        if (given.equals(key.right())) {
            return Credit.full("This is the level that was there.");
        }
        if (crosses(given, key)) {
            return Credit.none(
                    key.normal().contains(given)
                            ? "Healthy people show this level; what was there is not one of theirs."
                            : "What was there is a level that healthy people show; this one is not.");
        }
        if (key.ordered() && Math.abs(at - key.codes().indexOf(key.right())) == 1) {
            return new Credit(ONE_OFF, "One level off.");
        }
        return Credit.none(key.ordered() ? "More than one level off." : "Something else was there.");
    }

    /** Whether a level calls a normal level abnormal or the reverse. */
    public static boolean crosses(String given, ScaleKey key) {
        return key.codes().contains(given)
                && key.normal().contains(given) != key.normal().contains(key.right());
    }
}

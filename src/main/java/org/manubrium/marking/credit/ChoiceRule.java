package org.manubrium.marking.credit;

/** One of a set of words: right or not. */
public final class ChoiceRule {
    private ChoiceRule() {}

    public static Credit credit(String given, String right) {
        return given.equals(right) ? Credit.full("This is what was there.") : Credit.none("Something else was there.");
    }
}

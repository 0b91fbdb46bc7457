package org.manubrium.marking.credit;

import org.manubrium.marking.key.MeansKey;

/** What a sign means in this patient: the exact term 1, a related term 1/2, any other 0. */
public final class MeansRule {
    private static final double RELATED = 0.5;

    private MeansRule() {}

    public static Credit credit(String given, MeansKey key) {
        if (given.equals(key.term())) {
            return Credit.full("This explains it in this patient.");
        }
        if (key.related().contains(given)) {
            return new Credit(RELATED, "Related to what explains it, but not the same.");
        }
        return Credit.none("Something else explains it in this patient.");
    }
}

package org.manubrium.marking.credit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.manubrium.marking.key.SiteKey;

/**
 * Where the lesion lies: 1 less a third for every step along the pathway, or every level of the same structure; the wrong
 * side earns nothing. With several lesions, or several answers, the credits are shared over the longer list, each answer
 * used once.
 */
public final class SiteRule {
    private static final double REACH = 3;

    private SiteRule() {}

    /** @param keys the true places, at least one */
    public static Credit credit(List<String> given, List<SiteKey> keys) {
        List<String> left = new ArrayList<>(given);
        double sum = 0;
        for (SiteKey key : keys) {
            double best = 0;
            String used = "";
            for (String said : left) {
                if (one(said, key) > best) {
                    best = one(said, key);
                    used = said;
                }
            }
            left.remove(used);
            sum += best;
        }
        double amount = sum / Math.max(keys.size(), given.size());
        return new Credit(amount, why(amount, given, keys));
    }

    private static double one(String said, SiteKey key) {
        OptionalInt steps = key.steps(said);
        return steps.isPresent() ? Math.max(0, 1 - steps.getAsInt() / REACH) : 0;
    }

    private static String why(double amount, List<String> given, List<SiteKey> keys) {
        if (amount == 1) {
            return "The lesion lies there.";
        }
        if (given.size() > keys.size()) {
            return "More places are named than there are lesions; the credit is shared among them.";
        }
        return amount > 0
                ? "Near the lesion: a third is lost for every step along the pathway."
                : "On the wrong side, or three steps or more from the lesion.";
    }
}

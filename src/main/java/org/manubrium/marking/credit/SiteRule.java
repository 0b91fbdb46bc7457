package org.manubrium.marking.credit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.manubrium.marking.key.SiteKey;

/**
 * Where the lesion lies: 1 less a third for every step along the pathway, or every level of the same structure; the wrong
 * side earns nothing. With several lesions, or several answers, the credits are shared over the longer list, each answer
 * used once and where it earns most, whatever the order.
 */
public final class SiteRule {
    private static final double REACH = 3;

    /** So many places near a lesion are read. */
    private static final int READ = 12;

    private SiteRule() {}

    /** @param keys the true places, at least one */
    public static Credit credit(List<String> given, List<SiteKey> keys) {
        List<String> near = given.stream()
                .filter(said -> keys.stream().anyMatch(key -> one(said, key) > 0))
                .limit(READ)
                .toList();
        double sum = best(near, keys);
        double amount = sum / Math.max(keys.size(), given.size());
        return new Credit(amount, why(amount, given, keys));
    }

    /** The most that answers, each used once, can earn of the places. */
    private static double best(List<String> given, List<SiteKey> keys) {
        if (keys.isEmpty() || given.isEmpty()) {
            return 0;
        }
        List<SiteKey> others = keys.subList(1, keys.size());
        double best = best(given, others);
        for (int i = 0; i < given.size(); i++) {
            double here = one(given.get(i), keys.get(0));
            if (here > 0) {
                List<String> left = new ArrayList<>(given);
                left.remove(i);
                best = Math.max(best, here + best(left, others));
            }
        }
        return best;
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

package org.manubrium.marking.credit;

import java.util.List;

/** What to do next: the share of the steps named that are right; any of the right ones will do. */
public final class NextRule {
    private NextRule() {}

    /** @param given at least one */
    public static Credit credit(List<String> given, List<String> right) {
        long hits = given.stream().distinct().filter(right::contains).count();
        double amount = hits / (double) given.size();
        return new Credit(amount, amount == 1 ? "A right next step." : "Not every step named is a right next step.");
    }
}

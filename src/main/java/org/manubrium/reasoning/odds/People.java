package org.manubrium.reasoning.odds;

import java.util.OptionalDouble;

/** Says a likelihood ratio in numbers of people. */
public final class People {
    private static final int HUNDRED = 100;

    private People() {}

    /**
     * What a finding does to the chance of a disease: "Of 100 such people 20 have …".
     *
     * @param before how many of a hundred have it beforehand, 0..1
     * @param present whether the finding is there
     * @return empty words if no ratio was published for that
     */
    public static String said(LikelihoodRatio ratio, double before, boolean present) {
        OptionalDouble factor = present ? ratio.positive() : ratio.negative();
        if (factor.isEmpty()) {
            return "";
        }
        double after = Odds.after(before, factor.getAsDouble());
        return "Of 100 such people " + of(before) + " have " + ratio.of() + ". Of 100 of them "
                + (present ? "with" : "without") + " this finding (" + lower(ratio.finding()) + ") it is "
                + of(after) + ".";
    }

    private static String of(double chance) {
        long people = Math.round(chance * HUNDRED);
        return people == 0 && chance > 0
                ? "fewer than 1"
                : people == HUNDRED && chance < 1 ? "more than 99" : Long.toString(people);
    }

    private static String lower(String finding) {
        boolean name = finding.length() > 1 && Character.isUpperCase(finding.charAt(1));
        return name ? finding : Character.toLowerCase(finding.charAt(0)) + finding.substring(1);
    }
}

package org.manubrium.marking.credit;

import java.util.List;
import java.util.stream.IntStream;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;

/**
 * The differential: 1 for the truth named first, else 1 over its rank. Where confidences are given, the rank is how many are
 * held at least as likely; where they are not, it is the place in the list. Only the first five names are read. With
 * several true diagnoses the credits are averaged, and one does not push back another.
 */
public final class DifferentialRule {
    /** The longest list that is read. */
    public static final int LONGEST = 5;

    private DifferentialRule() {}

    /** @param truths at least one */
    public static Credit credit(List<Guess> given, List<Diagnosis> truths) {
        double amount = truths.stream()
                .mapToDouble(truth -> one(given, truth, truths))
                .average()
                .orElseThrow(() -> new IllegalArgumentException("no diagnosis is true"));
        return new Credit(amount, why(amount, given));
    }

    private static double one(List<Guess> given, Diagnosis truth, List<Diagnosis> truths) {
        return IntStream.range(0, Math.min(LONGEST, given.size()))
                .filter(i -> truth.accepts(given.get(i).diagnosis()))
                .mapToDouble(i -> 1.0 / rank(given, i, truths))
                .max()
                .orElse(0);
    }

    private static long rank(List<Guess> given, int at, List<Diagnosis> truths) {
        boolean sure = given.stream().allMatch(guess -> guess.confidence().isPresent());
        return 1
                + IntStream.range(0, given.size())
                        .filter(i -> i != at)
                        .filter(i -> sure ? given.get(i).atLeastAsSureAs(given.get(at)) : i < at)
                        .filter(i -> truths.stream()
                                .noneMatch(t -> t.accepts(given.get(i).diagnosis())))
                        .count();
    }

    private static String why(double amount, List<Guess> given) {
        if (amount == 1) {
            return "What ails the patient is held the most likely.";
        }
        String more = given.size() > LONGEST ? " Only the first five names are read." : "";
        return amount > 0
                ? "What ails the patient is named, but others are held as likely or likelier, or part of it is missing."
                        + more
                : "What ails the patient is not named." + more;
    }
}

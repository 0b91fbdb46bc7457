package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;

/**
 * One of a student's questions of one day.
 *
 * @param askedOn the date, as 2027-02-03
 * @param number 1, 2, 3 … of that day
 * @param fact what it asks; it may say what is right
 * @param question what the browser gets, JSON
 * @param solution what is right and why, JSON
 * @param chosen the place of the option that was chosen
 */
public record DrillQuestion(
        long id,
        long accountId,
        String askedOn,
        int number,
        String fact,
        String question,
        String solution,
        Optional<Instant> answeredAt,
        Optional<Integer> chosen,
        Optional<String> chosenText,
        Optional<Boolean> wasRight) {

    /** One that has just been made. */
    public static DrillQuestion made(
            long account, String day, int number, String fact, String question, String solution) {
        return new DrillQuestion(
                0,
                account,
                day,
                number,
                fact,
                question,
                solution,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public boolean isAnswered() {
        return answeredAt.isPresent();
    }
}

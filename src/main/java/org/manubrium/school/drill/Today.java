package org.manubrium.school.drill;

import java.util.List;
import java.util.Optional;
import org.manubrium.school.bedside.Choices;

/**
 * A student's signs of one day.
 *
 * @param choices the manoeuvres and scales under the student's convention, for drawing
 */
public record Today(String day, List<Asked> questions, Choices choices) {
    public Today {
        questions = List.copyOf(questions);
    }

    /** One question; {@code question} as JSON. */
    public record Asked(int number, String question, Optional<Answered> answer) {}

    /** What was chosen, what was right and why; options by their place. {@code source} is made of ids. */
    public record Answered(int chosen, int right, String why, String source, String confidence) {}
}

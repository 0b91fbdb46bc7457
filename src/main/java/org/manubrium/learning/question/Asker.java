package org.manubrium.learning.question;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes the questions of one kind. */
interface Asker {
    /** What stands before the colon in its facts. */
    String kind();

    /** What it can ask about, as it stands after the colon. */
    List<String> subjects();

    /**
     * A question; empty if the patients that chance drew show nothing to ask about.
     *
     * @param confused wrong answers that fellow students gave to it, the commonest first
     */
    Optional<SignQuestion> ask(String subject, String convention, List<String> confused, Random random);

    default String fact(String subject) {
        return kind() + ":" + subject;
    }
}

package org.manubrium.school.review;

import java.util.Optional;
import org.manubrium.marking.MarkSheet;
import org.manubrium.store.Attempt;

/** One attempt at a set case, with its mark sheet once it is marked. */
public record Sat(Student student, Attempt attempt, Optional<MarkSheet> sheet) {
    /** Whether it is the attempt that the review and the leaderboard look at. */
    public boolean counts() {
        return attempt.isFirst() && attempt.isHandedIn() && sheet.isPresent();
    }
}

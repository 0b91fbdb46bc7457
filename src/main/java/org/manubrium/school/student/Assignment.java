package org.manubrium.school.student;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A case set to a student's cohort, and what the student has made of it.
 *
 * @param station whether it is a timed, assessed encounter
 * @param open whether it can be begun now
 */
public record Assignment(
        long setCase,
        String title,
        String cohort,
        boolean station,
        boolean open,
        Instant opensAt,
        Instant closesAt,
        List<Try> tries) {

    /** The attempt that is begun and not handed in. */
    public Optional<Try> underWay() {
        return tries.stream().filter(t -> !t.handedIn()).findFirst();
    }

    /** Whether there is still something to do in it: it is open, or it was begun in time and is not handed in. */
    public boolean live() {
        return open || underWay().isPresent();
    }

    /** Whether it can be begun (again): a station is sat once. */
    public boolean canStart() {
        return open && underWay().isEmpty() && (!station || tries.isEmpty());
    }

    /** One attempt; {@code total} in percent once it is marked, {@code before} what it was before it was marked again. */
    public record Try(long attempt, boolean handedIn, Optional<Double> total, Optional<Double> before) {}
}

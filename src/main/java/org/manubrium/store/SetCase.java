package org.manubrium.store;

import java.time.Instant;

/** A case version set to a cohort: open from {@code opensAt} until, not including, {@code closesAt}. */
public record SetCase(long id, long cohortId, long caseVersionId, Instant opensAt, Instant closesAt, Mode mode) {
    /** How it is sat. */
    public enum Mode {
        /** As often as one likes, with the debrief at once. */
        PRACTICE,
        /** A timed, assessed encounter. */
        STATION
    }

    public boolean isOpen(Instant now) {
        return !now.isBefore(opensAt) && now.isBefore(closesAt);
    }
}

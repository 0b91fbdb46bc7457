package org.manubrium.security;

import java.time.Duration;
import java.time.Instant;

/**
 * How often one may be wrong: {@code limit} times within {@code window}, counted from the first.
 */
public record ThrottlePolicy(int limit, Duration window) {
    /** For one account name: five wrong passwords in a quarter of an hour. */
    public static final ThrottlePolicy ACCOUNT = new ThrottlePolicy(5, Duration.ofMinutes(15));

    /** For one address, behind which a whole classroom may sit: sixty. */
    public static final ThrottlePolicy ADDRESS = new ThrottlePolicy(60, Duration.ofMinutes(15));

    /** The counter after one more attempt at {@code now}; a window that has passed starts anew. */
    public Counter after(Counter counter, Instant now) {
        return isOver(counter, now) ? new Counter(1, now) : new Counter(counter.failures() + 1, counter.startedAt());
    }

    /** Whether an attempt that made this counter goes beyond the limit. */
    public boolean refuses(Counter counter) {
        return counter.failures() > limit;
    }

    /** How long until the window of this counter has passed. */
    public Duration wait(Counter counter, Instant now) {
        return Duration.between(now, counter.startedAt().plus(window));
    }

    private boolean isOver(Counter counter, Instant now) {
        return !now.isBefore(counter.startedAt().plus(window));
    }

    /** Attempts since the window began that have not ended well. */
    public record Counter(int failures, Instant startedAt) {
        /** The same counter with one attempt taken back. */
        public Counter less() {
            return new Counter(Math.max(0, failures - 1), startedAt);
        }
    }
}

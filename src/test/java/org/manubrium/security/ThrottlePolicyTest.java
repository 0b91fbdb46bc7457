package org.manubrium.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.manubrium.security.ThrottlePolicy.Counter;

class ThrottlePolicyTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
    private static final ThrottlePolicy TWO_IN_A_MINUTE = new ThrottlePolicy(2, Duration.ofMinutes(1));

    @Test
    void oneMoreThanTheLimitIsRefused() {
        assertThat(TWO_IN_A_MINUTE.refuses(new Counter(2, NOON))).isFalse();
        assertThat(TWO_IN_A_MINUTE.refuses(new Counter(3, NOON))).isTrue();
    }

    @Test
    void windowRunsFromTheFirstAttemptAndThenStartsAnew() {
        Counter full = new Counter(3, NOON);

        assertThat(TWO_IN_A_MINUTE.after(full, NOON.plusSeconds(59))).isEqualTo(new Counter(4, NOON));
        assertThat(TWO_IN_A_MINUTE.after(full, NOON.plusSeconds(60))).isEqualTo(new Counter(1, NOON.plusSeconds(60)));
        assertThat(TWO_IN_A_MINUTE.wait(full, NOON.plusSeconds(45))).isEqualTo(Duration.ofSeconds(15));
    }
}

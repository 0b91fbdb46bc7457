package org.manubrium.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;

class ThrottleTest {
    private static final String HERE = "192.0.2.1";

    private final Database database = Database.open(DatabaseSettings.throwAway(4));
    private final Throttle throttle = new Throttle(database, new MovableClock());

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void addressThatTriesManyNamesIsThrottledAndNoOther() {
        IntStream.range(0, 60)
                .forEach(i -> assertThat(throttle.count("name" + i, HERE)).isEmpty());

        assertThat(throttle.count("another", HERE)).isPresent();
        assertThat(throttle.count("a-third", "192.0.2.2")).isEmpty();
    }

    @Test
    void classroomBehindOneAddressMaySignIn() {
        for (int i = 0; i < 70; i++) {
            String name = "student" + i;
            assertThat(throttle.count(name, HERE)).isEmpty();
            database.inTransaction(stores -> {
                throttle.forgive(stores, name, HERE);
                return name;
            });
        }
    }
}

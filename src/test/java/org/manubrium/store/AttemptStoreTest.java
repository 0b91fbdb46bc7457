package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.IntStream;
import org.manubrium.security.Account;

class AttemptStoreTest {
    @EachDatabase
    void attemptsAreNumberedAndTheFirstIsMarkedAsSuch(Database database) {
        Account rowan = Rows.student(database, "rowan");
        CaseVersion version = Rows.version(database);

        Attempt first = start(database, rowan, Optional.empty(), version);
        Attempt second = start(database, rowan, Optional.empty(), version);

        assertThat(first.number()).isEqualTo(1);
        assertThat(first.isFirst()).isTrue();
        assertThat(second.number()).isEqualTo(2);
        assertThat(second.isFirst()).isFalse();
        assertThat(Rows.list(database, stores -> stores.attempts().of(rowan.id(), version.id())))
                .isEqualTo(java.util.List.of(first, second));
    }

    @EachDatabase
    void firstAttemptAtASetCaseIsFirstEvenAfterPractice(Database database) {
        Account rowan = Rows.student(database, "rowan");
        CaseVersion version = Rows.version(database);
        Optional<Long> set = Optional.of(setCase(database, version).id());

        start(database, rowan, Optional.empty(), version);
        Attempt counted = start(database, rowan, set, version);
        Attempt again = start(database, rowan, set, version);

        assertThat(counted.isFirst()).isTrue();
        assertThat(counted.number()).isEqualTo(2);
        assertThat(again.isFirst()).isFalse();
    }

    @EachDatabase
    void secondHandInIsRefusedAndChangesNothing(Database database) {
        Attempt attempt = Rows.attempt(database);

        assertThat(handIn(database, attempt, Duration.ZERO)).isTrue();
        assertThat(handIn(database, attempt, Duration.ofMinutes(1))).isFalse();
        assertThat(Rows.maybe(database, stores -> stores.attempts().find(attempt.id())))
                .hasValueSatisfying(stored -> assertThat(stored.handedInAt()).contains(Rows.NOON));
    }

    @EachDatabase
    void manyStartedAtOnceAreNumberedWithoutGaps(Database database) {
        Account rowan = Rows.student(database, "rowan");
        CaseVersion version = Rows.version(database);

        IntStream.range(0, 4).parallel().forEach(i -> start(database, rowan, Optional.empty(), version));

        assertThat(Rows.list(database, stores -> stores.attempts().of(rowan.id(), version.id())).stream()
                        .map(Attempt::number))
                .containsExactly(1, 2, 3, 4);
    }

    private static Attempt start(Database database, Account account, Optional<Long> set, CaseVersion version) {
        return database.inTransaction(stores -> stores.attempts().start(account.id(), set, version.id(), Rows.NOON));
    }

    private static boolean handIn(Database database, Attempt attempt, Duration later) {
        return database.inTransaction(stores -> stores.attempts().handIn(attempt.id(), Rows.NOON.plus(later)));
    }

    private static SetCase setCase(Database database, CaseVersion version) {
        return database.inTransaction(stores -> {
            Cohort cohort = stores.cohorts().add("Spring", "plain", Optional.empty(), Rows.NOON);
            return stores.setCases()
                    .add(new SetCase(
                            0,
                            cohort.id(),
                            version.id(),
                            Rows.NOON,
                            Rows.NOON.plus(Duration.ofDays(7)),
                            SetCase.Mode.STATION));
        });
    }
}

package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.manubrium.store.Appended.Added;
import org.manubrium.store.Appended.HandedIn;
import org.manubrium.store.Appended.NoAttempt;
import org.manubrium.store.Appended.Repeated;

class EventStoreTest {
    @EachDatabase
    void eventsAreNumberedInTheOrderInWhichTheyCame(Database database) {
        Attempt attempt = Rows.attempt(database);

        append(database, Rows.event(attempt, "b"));
        append(database, Rows.event(attempt, "a"));

        List<StoredEvent> events = events(database, attempt);
        assertThat(events).extracting(StoredEvent::clientKey).containsExactly("b", "a");
        assertThat(events).extracting(StoredEvent::seq).containsExactly(1, 2);
        assertThat(events.get(0)).isEqualTo(Rows.event(attempt, "b").numbered(1));
    }

    @EachDatabase
    void sameClientKeyReturnsWhatIsStoredAndAddsNothing(Database database) {
        Attempt attempt = Rows.attempt(database);
        append(database, Rows.event(attempt, "a"));
        NewEvent again = new NewEvent(attempt.id(), "a", "asked", Rows.NOON, 9, "sitting", "{}", "other");

        assertThat(append(database, again))
                .isEqualTo(new Repeated(Rows.event(attempt, "a").numbered(1)));
        assertThat(events(database, attempt)).hasSize(1);
    }

    @EachDatabase
    void sameClientKeyInAnotherAttemptIsAnotherEvent(Database database) {
        Attempt one = Rows.attempt(database);
        Attempt other = database.inTransaction(
                stores -> stores.attempts().start(one.accountId(), one.setCaseId(), one.caseVersionId(), Rows.NOON));

        assertThat(append(database, Rows.event(one, "a"))).isInstanceOf(Added.class);
        assertThat(append(database, Rows.event(other, "a"))).isInstanceOf(Added.class);
    }

    @EachDatabase
    void handedInAttemptTakesNoMoreButStillAnswersAnOldKey(Database database) {
        Attempt attempt = Rows.attempt(database);
        append(database, Rows.event(attempt, "a"));
        database.inTransaction(stores -> stores.attempts().handIn(attempt.id(), Rows.NOON));

        assertThat(append(database, Rows.event(attempt, "b"))).isInstanceOf(HandedIn.class);
        assertThat(append(database, Rows.event(attempt, "a"))).isInstanceOf(Repeated.class);
        assertThat(events(database, attempt)).hasSize(1);
    }

    @EachDatabase
    void attemptThatIsNotThereIsSaidToBeSo(Database database) {
        Attempt attempt = Rows.attempt(database);
        NewEvent stray = new NewEvent(attempt.id() + 1, "a", "moved", Rows.NOON, 0, "lying", "{}", "");

        assertThat(append(database, stray)).isEqualTo(new NoAttempt(attempt.id() + 1));
    }

    @EachDatabase
    void manyAtOnceAllSucceedWithDifferentNumbers(Database database) throws Exception {
        Attempt attempt = Rows.attempt(database);

        List<Appended> results = atOnce(IntStream.range(0, 60)
                .<Callable<Appended>>mapToObj(i -> () -> append(database, Rows.event(attempt, "key-" + i)))
                .toList());

        assertThat(results).hasOnlyElementsOfType(Added.class);
        assertThat(events(database, attempt))
                .extracting(StoredEvent::seq)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 60).boxed().toList());
    }

    @EachDatabase
    void doubleClickIsStoredOnce(Database database) throws Exception {
        Attempt attempt = Rows.attempt(database);

        List<Appended> results = atOnce(IntStream.range(0, 30)
                .<Callable<Appended>>mapToObj(i -> () -> append(database, Rows.event(attempt, "same")))
                .toList());

        assertThat(results).filteredOn(Added.class::isInstance).hasSize(1);
        assertThat(results).filteredOn(Repeated.class::isInstance).hasSize(29);
        assertThat(events(database, attempt)).hasSize(1);
    }

    @EachDatabase
    void longBodyComesBackWhole(Database database) {
        Attempt attempt = Rows.attempt(database);
        String body = "é\"{}'\n".repeat(50_000);
        append(database, new NewEvent(attempt.id(), "a", "probed", Rows.NOON, 0.1, "lying", body, body));

        assertThat(events(database, attempt).get(0).shown()).isEqualTo(body);
        assertThat(events(database, attempt).get(0).body()).isEqualTo(body);
    }

    private static Appended append(Database database, NewEvent event) {
        return database.inTransaction(stores -> stores.events().append(event));
    }

    private static List<StoredEvent> events(Database database, Attempt attempt) {
        return database.direct(stores -> stores.events().of(attempt.id()));
    }

    private static <T> List<T> atOnce(List<Callable<T>> calls) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<T> results = new java.util.ArrayList<>();
            for (Future<T> future : threads.invokeAll(calls)) {
                results.add(future.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}

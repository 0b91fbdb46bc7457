package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.security.Account;
import org.manubrium.security.Role;

/** Rows that a test needs before it comes to its point. */
final class Rows {
    static final Instant NOON = Instant.parse("2026-03-02T12:00:00.123456Z");

    private Rows() {}

    static Account student(Database database, String name) {
        return database.inTransaction(
                stores -> stores.accounts().add(name, "Person " + name, "hash", Set.of(Role.STUDENT), NOON));
    }

    static CaseVersion version(Database database) {
        return database.inTransaction(stores -> {
            CaseFile file = stores.cases().named("triceps", "A weak elbow");
            return stores.cases()
                    .publish(new NewCaseVersion(file.id(), "yaml: 1", "{}", "abc", Optional.empty(), NOON));
        });
    }

    static Attempt attempt(Database database) {
        Account student = student(database, "rowan");
        CaseVersion version = version(database);
        return database.inTransaction(
                stores -> stores.attempts().start(student.id(), Optional.empty(), version.id(), NOON));
    }

    static NewEvent event(Attempt attempt, String clientKey) {
        return new NewEvent(attempt.id(), clientKey, "moved", NOON, 4.5, "lying", "{\"type\":\"moved\"}", "");
    }

    /** One row or none; its own type, so that an assertion knows what it has. */
    static <T> Optional<T> maybe(Database database, Work<Optional<T>> work) {
        return database.direct(work);
    }

    static <T> List<T> list(Database database, Work<List<T>> work) {
        return database.direct(work);
    }
}

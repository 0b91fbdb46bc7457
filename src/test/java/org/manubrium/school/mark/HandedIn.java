package org.manubrium.school.mark;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.manubrium.TestSchool;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.exchange.EventJson;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.correction.CorrectedKey;
import org.manubrium.marking.correction.Correction;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.security.Role;
import org.manubrium.store.Attempt;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Database;
import org.manubrium.store.KeyCorrection;
import org.manubrium.store.NewCaseVersion;
import org.manubrium.store.NewEvent;
import org.manubrium.store.Remarking;
import org.manubrium.store.Stores;

/** Attempts at one case version, handed in and marked. */
public final class HandedIn {
    /** The key of a seventh cervical root. */
    public static final CompiledKey KEY = new CaseKeys(TestSchool.REFERENCE)
            .of(CaseFile.read(TestSchool.ROOT, "root", TestSchool.REFERENCE)
                    .caseFile()
                    .orElseThrow());

    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    final Database database;
    final CaseVersion version;
    final long educator;
    final List<Attempt> attempts;

    /** @param events what each of the students did */
    public HandedIn(Database database, Marks marks, int students, List<Event> events) {
        this.database = database;
        this.educator = account("teacher", Role.EDUCATOR);
        this.version = database.inTransaction(stores -> stores.cases()
                .publish(new NewCaseVersion(
                        stores.cases().named("arm", "An arm").id(),
                        TestSchool.ROOT,
                        KeyJson.write(KEY),
                        KEY.tablesHash(),
                        Optional.empty(),
                        NOON)));
        this.attempts = IntStream.range(0, students)
                .mapToObj(i -> one(account("student" + i, Role.STUDENT), marks, events))
                .toList();
    }

    private long account(String name, Role role) {
        return database.inTransaction(
                        stores -> stores.accounts().add(name, "Person " + name, "hash", Set.of(role), NOON))
                .id();
    }

    private Attempt one(long account, Marks marks, List<Event> events) {
        return database.inTransaction(stores -> {
            Attempt attempt = stores.attempts().start(account, Optional.empty(), version.id(), NOON);
            for (Event event : events) {
                String key = "k" + events.indexOf(event);
                stores.events()
                        .append(new NewEvent(
                                attempt.id(),
                                key,
                                event.type(),
                                NOON,
                                0,
                                "sitting-edge",
                                EventJson.write(new Logged.Keyed(key, event)),
                                ""));
            }
            stores.attempts().handIn(attempt.id(), NOON);
            marks.handedIn(stores, attempt);
            return stores.attempts().find(attempt.id()).orElseThrow();
        });
    }

    /** Asks for everything to be marked again by this key. */
    public Remarking correctTo(Remarkings remarkings, CompiledKey key) {
        return database.inTransaction(stores -> {
            stores.keys()
                    .add(new KeyCorrection(
                            0,
                            version.id(),
                            KeyJson.write(key),
                            key.tablesHash(),
                            "a line",
                            "a slip",
                            Optional.of(educator),
                            NOON));
            return ask(stores, remarkings);
        });
    }

    /** Asks for everything to be marked again by the key that is in force. */
    public Remarking ask(Remarkings remarkings) {
        return database.inTransaction(stores -> ask(stores, remarkings));
    }

    private Remarking ask(Stores stores, Remarkings remarkings) {
        return remarkings.ask(stores, version.id(), Optional.empty(), "a slip", educator);
    }

    /** The same key, in which only another next step is right. */
    public static CompiledKey otherNextStep() {
        return CorrectedKey.of(KEY, new Correction("conclusion/next", List.of(), "wait"));
    }
}

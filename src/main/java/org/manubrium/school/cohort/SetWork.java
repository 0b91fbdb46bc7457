package org.manubrium.school.cohort;

import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.Misfilled;
import org.manubrium.school.account.Refused;
import org.manubrium.store.Attempt;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.SetCase;
import org.manubrium.store.Stores;
import org.manubrium.store.VersionLine;

/** Setting cases to a cohort. */
public final class SetWork {
    private final Database database;
    private final Clock clock;

    public SetWork(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** What is set to a cohort, in the order in which it opens. */
    public List<SetLine> of(long cohort) {
        return database.direct(stores -> stores.setCases().of(cohort).stream()
                .map(set -> line(stores, set))
                .toList());
    }

    /** Every case in use, by title, in its newest version. */
    public List<CaseChoice> choices() {
        return database.direct(stores -> stores.cases().all().stream()
                .flatMap(file -> stores.cases().lines(file.id()).stream()
                        .limit(1)
                        .map(version -> new CaseChoice(version.id(), file.title(), version.version())))
                .toList());
    }

    /**
     * Sets a case version to a cohort.
     *
     * @throws Misfilled for a version that is not in use or times in the wrong order
     */
    public SetCase set(long educator, long cohort, Setting wanted) {
        Map<String, String> faults = new LinkedHashMap<>();
        closingFault(wanted.opensAt(), wanted.closesAt()).ifPresent(sentence -> faults.put("closes", sentence));
        if (choices().stream().noneMatch(choice -> choice.versionId() == wanted.caseVersionId())) {
            faults.put("case", "Choose one of the cases in use.");
        }
        Misfilled.refuse(faults);
        return database.inTransaction(stores -> {
            SetCase set = stores.setCases()
                    .add(new SetCase(
                            0, cohort, wanted.caseVersionId(), wanted.opensAt(), wanted.closesAt(), wanted.mode()));
            audit(stores, educator, "case-set", set);
            return set;
        });
    }

    /**
     * Moves the closing time of a set case.
     *
     * @throws Misfilled if it would close before it opens
     */
    public void moveClosing(long educator, SetCase set, Instant closesAt) {
        closingFault(set.opensAt(), closesAt).ifPresent(sentence -> {
            throw Misfilled.in("closes", sentence);
        });
        database.inTransaction(stores -> {
            stores.setCases().setClosing(set.id(), closesAt);
            return audit(stores, educator, "closing-moved", set);
        });
    }

    /**
     * Takes a set case back.
     *
     * @throws Refused once somebody has begun it
     */
    public void takeBack(long educator, SetCase set) {
        database.inTransaction(stores -> {
            if (!stores.attempts().ofSetCase(set.id()).isEmpty()) {
                throw new Refused("Somebody has begun this case. Close it instead: what was done stays.");
            }
            stores.setCases().remove(set.id());
            return audit(stores, educator, "case-taken-back", set);
        });
    }

    /** A set case of this cohort. */
    public Optional<SetCase> find(long cohort, long id) {
        return database.direct(stores -> stores.setCases().find(id)).filter(set -> set.cohortId() == cohort);
    }

    private static Optional<String> closingFault(Instant opens, Instant closes) {
        return closes.isAfter(opens) ? Optional.empty() : Optional.of("It must close after it opens.");
    }

    private static SetLine line(Stores stores, SetCase set) {
        VersionLine version = stores.cases().line(set.caseVersionId()).orElseThrow();
        List<Attempt> attempts = stores.attempts().ofSetCase(set.id());
        return new SetLine(
                set,
                version.title(),
                version.version(),
                students(attempts),
                students(attempts.stream().filter(Attempt::isHandedIn).toList()));
    }

    private static long students(List<Attempt> attempts) {
        return attempts.stream().mapToLong(Attempt::accountId).distinct().count();
    }

    private AuditEntry audit(Stores stores, long educator, String action, SetCase set) {
        AuditEntry entry = new AuditEntry(
                clock.instant(),
                Optional.of(educator),
                action,
                "cohort " + set.cohortId() + ", case version " + set.caseVersionId());
        stores.audit().add(entry);
        return entry;
    }
}

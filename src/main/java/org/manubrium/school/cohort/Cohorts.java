package org.manubrium.school.cohort;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.Misfilled;
import org.manubrium.school.mark.RemarkWorker;
import org.manubrium.school.mark.Remarkings;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.SetCase;
import org.manubrium.store.Stores;

/** The school's cohorts. Every educator may change each of them; who did is in the audit. */
public final class Cohorts {
    private static final int LONGEST_NAME = 200;

    private final Database database;
    private final List<Convention> conventions;
    private final Remarkings remarkings;
    private final RemarkWorker worker;
    private final Clock clock;

    public Cohorts(
            Database database, List<Convention> conventions, Remarkings remarkings, RemarkWorker worker, Clock clock) {
        this.database = database;
        this.conventions = List.copyOf(conventions);
        this.remarkings = remarkings;
        this.worker = worker;
        this.clock = clock;
    }

    /** What a cohort may be marked under. */
    public List<Convention> conventions() {
        return conventions;
    }

    /** The name of a convention; its id if it is no longer in the tables. */
    public String conventionName(String id) {
        return conventions.stream()
                .filter(convention -> convention.id().equals(id))
                .map(Convention::name)
                .findFirst()
                .orElse(id);
    }

    /** Every cohort, the newest first. */
    public List<CohortLine> all() {
        return database.direct(stores -> stores.cohorts().all().stream()
                .map(cohort -> line(stores, cohort))
                .toList());
    }

    public Optional<Cohort> find(long id) {
        return database.direct(stores -> stores.cohorts().find(id));
    }

    /**
     * Makes a cohort, its leaderboard off and pseudonyms on.
     *
     * @throws Misfilled for a name that is blank, too long or taken, or a convention that is not in the tables
     */
    public Cohort make(long educator, String name, String convention) {
        Plan plan = new Plan(name, convention, false, true);
        return database.inTransaction(stores -> {
            check(stores, plan, Optional.empty());
            Cohort made = stores.cohorts().add(plan.name(), plan.convention(), Optional.of(educator), clock.instant());
            audit(stores, educator, "cohort-made", made);
            return made;
        });
    }

    /**
     * Changes a cohort. Under another convention everything that it has handed in is marked again.
     *
     * @throws Misfilled as {@link #make}
     */
    public void change(long educator, Cohort cohort, Plan plan) {
        database.inTransaction(stores -> {
            check(stores, plan, Optional.of(cohort));
            Cohort changed = new Cohort(
                    cohort.id(),
                    plan.name(),
                    plan.convention(),
                    plan.leaderboardOn(),
                    plan.pseudonyms(),
                    cohort.createdBy(),
                    cohort.createdAt());
            stores.cohorts().set(changed);
            if (!cohort.convention().equals(plan.convention())) {
                markAgain(stores, educator, cohort, plan.convention());
            }
            return audit(stores, educator, "cohort-changed", changed);
        });
        worker.wake();
    }

    private void markAgain(Stores stores, long educator, Cohort cohort, String convention) {
        String reason = "The cohort is marked under the convention “" + conventionName(convention) + "” now, not “"
                + conventionName(cohort.convention()) + "”.";
        for (SetCase set : stores.setCases().of(cohort.id())) {
            remarkings.ask(stores, set.caseVersionId(), Optional.of(set.id()), reason, educator);
        }
    }

    private static CohortLine line(Stores stores, Cohort cohort) {
        return new CohortLine(
                cohort,
                stores.cohorts().roster(cohort.id()).size(),
                stores.setCases().of(cohort.id()).size());
    }

    private void check(Stores stores, Plan plan, Optional<Cohort> before) {
        Map<String, String> faults = new LinkedHashMap<>();
        nameFault(stores, plan, before).ifPresent(sentence -> faults.put("name", sentence));
        conventionFault(plan).ifPresent(sentence -> faults.put("convention", sentence));
        Misfilled.refuse(faults);
    }

    private static Optional<String> nameFault(Stores stores, Plan plan, Optional<Cohort> before) {
        if (plan.name().isEmpty()) {
            return Optional.of("Give the cohort a name, such as the year and the clinical block.");
        }
        if (plan.name().length() > LONGEST_NAME) {
            return Optional.of("A name may have at most " + LONGEST_NAME + " characters.");
        }
        boolean taken = stores.cohorts().all().stream()
                .filter(other ->
                        before.map(Cohort::id).filter(id -> id == other.id()).isEmpty())
                .anyMatch(other -> other.name().equalsIgnoreCase(plan.name()));
        return taken ? Optional.of("There is a cohort of this name already.") : Optional.empty();
    }

    private Optional<String> conventionFault(Plan plan) {
        return conventions.stream().noneMatch(known -> known.id().equals(plan.convention()))
                ? Optional.of("Choose one of the teaching conventions.")
                : Optional.empty();
    }

    private AuditEntry audit(Stores stores, long educator, String action, Cohort cohort) {
        AuditEntry entry = new AuditEntry(clock.instant(), Optional.of(educator), action, "cohort " + cohort.id());
        stores.audit().add(entry);
        return entry;
    }
}

package org.manubrium.school.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.school.account.DemoAccounts;
import org.manubrium.school.bedside.Taken;
import org.manubrium.school.cohort.Plan;
import org.manubrium.school.cohort.Setting;
import org.manubrium.security.Role;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.Enrolment;
import org.manubrium.store.SetCase;

/**
 * Fennbrook Medical School: a dozen cases in use, one cohort of invented students under the first teaching convention, all
 * cases set to it. Two have closed, one is being sat, the others have just opened. What was handed in was done event by
 * event at the bedside and marked like anybody's work.
 */
public final class Fennbrook {
    private static final long SEED = 20_270_203;
    private static final String COHORT = "Fennbrook Medical School, year 3";
    private static final String STUDENTS = """
            Ada Fennimore
            Bram Oakhanger
            Cleo Marshwell
            Dara Inchbald
            Edwin Tallow
            Fern Applegarth
            Gus Merrow
            Hetty Winterbourn
            Ivo Larkspur
            Juno Saltmarsh
            Kit Ravenscar
            Lotte Greenhalgh
            """;
    private static final String CLOSED_FIRST = "apprentice";
    private static final String CLOSED_LAST = "miller";
    private static final String STATION = "ferryman";
    private static final Duration DAY = Duration.ofDays(1);
    private static final int BEGAN_DAYS_AGO = 15;
    private static final int OPEN_DAYS = 21;

    private final Database database;
    private final Function<Clock, Rooms> rooms;
    private final Instant now;

    /** @param rooms the services under a given clock: what happened last week is done under last week's */
    public Fennbrook(Database database, Function<Clock, Rooms> rooms, Instant now) {
        this.database = database;
        this.rooms = rooms;
        this.now = now;
    }

    /**
     * Fills an empty database that holds the demo's own people.
     *
     * @return what can wait until the school is open: one more case each
     */
    public List<Runnable> fill() {
        Rooms began = at(BEGAN_DAYS_AGO);
        long educator = demo(Role.EDUCATOR);
        Cohort cohort = cohort(began, educator);
        List<SetCase> open = set(began, educator, cohort, ShippedCases.atTheDoor());
        sit(cohort, open.get(0), 12, 12);
        return ShippedCases.soon().stream()
                .<Runnable>map(name -> () -> later(began, educator, cohort, name))
                .toList();
    }

    private void later(Rooms began, long educator, Cohort cohort, String name) {
        SetCase set = set(began, educator, cohort, List.of(name)).get(0);
        switch (name) {
            case CLOSED_LAST -> sit(cohort, set, 6, 10);
            case STATION -> sit(cohort, set, 2, 5);
            default -> {}
        }
    }

    /** Puts cases in use and sets them to the cohort. */
    private List<SetCase> set(Rooms began, long educator, Cohort cohort, List<String> names) {
        List<CaseVersion> versions =
                began.cases().putInUse(names.stream().map(ShippedCases::text).toList());
        List<SetCase> set = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            set.add(began.work().set(educator, cohort.id(), setting(versions.get(i), names.get(i))));
        }
        return set;
    }

    private Cohort cohort(Rooms began, long educator) {
        String convention = began.cohorts().conventions().get(0).id();
        Cohort cohort = began.cohorts().make(educator, COHORT, convention);
        began.rosters().enrol(educator, cohort.id(), STUDENTS);
        began.rosters().admit(cohort.id(), demo(Role.STUDENT));
        began.cohorts().change(educator, cohort, new Plan(COHORT, convention, true, true));
        return cohort;
    }

    /** Two have closed, one is the assessed one, the rest is for practice. */
    private Setting setting(CaseVersion version, String name) {
        Instant opens = now.minus(DAY.multipliedBy(BEGAN_DAYS_AGO));
        return switch (name) {
            case CLOSED_FIRST ->
                new Setting(version.id(), opens, now.minus(DAY.multipliedBy(8)), SetCase.Mode.PRACTICE);
            case CLOSED_LAST -> new Setting(version.id(), opens, now.minus(DAY), SetCase.Mode.PRACTICE);
            case STATION -> new Setting(version.id(), opens, now.plus(DAY.multipliedBy(7)), SetCase.Mode.STATION);
            default -> new Setting(version.id(), opens, now.plus(DAY.multipliedBy(OPEN_DAYS)), SetCase.Mode.PRACTICE);
        };
    }

    /** So many of the invented students sit a case, so many days ago. */
    private void sit(Cohort cohort, SetCase set, int daysAgo, int students) {
        Rooms then = at(daysAgo);
        CaseVersion version = database.direct(stores -> stores.cases().version(set.caseVersionId()))
                .orElseThrow();
        Encounters encounters =
                new Encounters(then.bedside().examination(), KeyJson.read(version.compiledKey()), cohort.convention());
        long self = demo(Role.STUDENT);
        List<Enrolment> invented = then.rosters().of(cohort.id()).stream()
                .filter(place -> place.accountId() != self)
                .limit(students)
                .toList();
        for (Enrolment student : invented) {
            take(then, set, student.accountId(), encounters.of(slip(student, set)));
        }
    }

    /** Each student has a skill of their own, and each encounter its luck. */
    private static Slip slip(Enrolment student, SetCase set) {
        double skill = 0.6 + 0.38 * new SplittableRandom(SEED + student.accountId()).nextDouble();
        return new Slip(new SplittableRandom(SEED * set.id() + student.accountId()), skill);
    }

    private static void take(Rooms then, SetCase set, long account, List<Event> events) {
        long attempt = then.desk().start(set.id(), account);
        for (int i = 0; i < events.size(); i++) {
            Taken taken = then.bedside().take(attempt, account, new Logged.Keyed("seed-" + i, events.get(i)));
            if (!(taken instanceof Taken.Stored)) {
                throw new IllegalStateException("the demo's " + events.get(i) + " was not taken: " + taken);
            }
        }
    }

    private Rooms at(int daysAgo) {
        return rooms.apply(Clock.fixed(now.minus(DAY.multipliedBy(daysAgo)), ZoneOffset.UTC));
    }

    private long demo(Role role) {
        return database.direct(stores -> stores.accounts().named(DemoAccounts.loginName(role)))
                .orElseThrow()
                .id();
    }
}

package org.manubrium;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.manubrium.school.casedesk.CaseCheck;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.store.Cohort;
import org.manubrium.store.SetCase;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** A cohort on a test's server, to which cases can be set. */
public final class TestSchool {
    /** The shipped tables, built once for all tests. */
    public static final Reference REFERENCE = Tables.shipped();

    /** A seventh cervical root, and as little besides as a case may have. */
    public static final String ROOT = """
            title: A heavy arm
            slug: heavy-arm
            patient: {name: Hal Brennock, age: 46, sex: male}
            vignette: The left arm has been heavy for **six weeks**.
            history: {consent: "Yes, go ahead."}
            lesions: [{site: root C7 left, loss: 0.8, onset: 6 weeks}]
            """;

    /** The same, turning also on a manoeuvre whose text nobody here has opened. */
    public static final String UNCHECKED = ROOT.replace("heavy-arm", "heavier-arm")
            + "essential: [{manoeuvre: vibration, because: It is asked of everybody here.}]\n";

    // One for all tests, as it is for all who work at a server: it remembers the healthy people that it looked at last.
    private static final CaseCheck CHECK = SchoolRooms.check(REFERENCE);

    private static final Duration DAY = Duration.ofDays(1);

    private final TestServer server;
    private final CasesInUse cases;
    private final Cohort cohort;

    public TestSchool(TestServer server) {
        this.server = server;
        this.cases = new CasesInUse(server.database(), CHECK, Clock.systemUTC());
        String convention = REFERENCE.marking().conventions().ids().get(0);
        this.cohort = server.database()
                .inTransaction(stores -> stores.cohorts().add("Autumn", convention, Optional.empty(), Instant.now()));
    }

    /** Puts a case in use and sets it for practice, from yesterday until tomorrow. */
    public SetCase practice(String yaml) {
        return set(cases.putInUse(List.of(yaml)).get(0).id(), SetCase.Mode.PRACTICE);
    }

    /** Puts a case in use and sets it as a station, from yesterday until tomorrow. */
    public SetCase station(String yaml) {
        return set(cases.putInUse(List.of(yaml)).get(0).id(), SetCase.Mode.STATION);
    }

    /** Sets a case version, from yesterday until tomorrow. */
    public SetCase set(long version, SetCase.Mode mode) {
        Instant now = Instant.now();
        return server.database()
                .inTransaction(stores -> stores.setCases()
                        .add(new SetCase(0, cohort.id(), version, now.minus(DAY), now.plus(DAY), mode)));
    }

    /** Closes a set case from now on. */
    public void close(SetCase set) {
        server.database().inTransaction(stores -> {
            stores.setCases().setClosing(set.id(), Instant.now());
            return set;
        });
    }

    /** A new student of the cohort, who can sign in with {@link TestServer#PASSWORD}. */
    public Account student(String loginName) {
        Account account = server.account(loginName, Role.STUDENT);
        server.database().inTransaction(stores -> {
            stores.cohorts().enrol(cohort.id(), account.id(), "Dipper " + loginName);
            return account;
        });
        return account;
    }

    /** A new student of the cohort who has begun the case. */
    public TestVisit begin(String loginName, SetCase set) {
        student(loginName);
        return TestVisit.begin(server.signInAs(loginName), set);
    }
}

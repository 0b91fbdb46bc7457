package org.manubrium.school.cohort;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.school.account.PasswordLinks;
import org.manubrium.school.account.Refused;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.Enrolment;
import org.manubrium.store.Stores;

/** Who is in a cohort. */
public final class Rosters {
    private static final String NO_PASSWORD_YET = "";

    private final Database database;
    private final PasswordLinks links;
    private final Clock clock;

    public Rosters(Database database, PasswordLinks links, Clock clock) {
        this.database = database;
        this.links = links;
        this.clock = clock;
    }

    /** Who is in it, by name. */
    public List<Enrolment> of(long cohort) {
        return database.direct(stores -> stores.cohorts().roster(cohort));
    }

    /** Reads a pasted list against those who are in the cohort already. */
    public PastedRoster read(long cohort, String text) {
        return PastedRoster.read(
                text, of(cohort).stream().map(Enrolment::displayName).toList());
    }

    /**
     * Makes an account and a place for each name of a list, all or none.
     *
     * @throws Refused if the list has a problem or no name
     */
    public List<NewPlace> enrol(long educator, long cohort, String text) {
        return database.inTransaction(stores -> {
            List<String> enrolled = stores.cohorts().roster(cohort).stream()
                    .map(Enrolment::displayName)
                    .toList();
            PastedRoster roster = PastedRoster.read(text, enrolled);
            if (!roster.problems().isEmpty() || roster.names().isEmpty()) {
                throw new Refused("The list cannot be taken as it is.");
            }
            audit(stores, educator, "roster-pasted", cohort, roster.names().size());
            List<NewPlace> places = new ArrayList<>();
            roster.names().forEach(name -> places.add(place(stores, cohort, name)));
            return List.copyOf(places);
        });
    }

    /** Puts somebody who has an account into the cohort; being there already changes nothing. */
    public Enrolment admit(long cohort, long account) {
        return database.inTransaction(stores -> Enrolments.enrol(stores, cohort, account));
    }

    /**
     * A new link for someone who has lost the one before, or the password.
     *
     * @throws Refused for somebody who is more than a student: an educator's account is not opened this way
     */
    public Optional<NewPlace> renewLink(long educator, long cohort, long account) {
        return database.inTransaction(stores -> stores.cohorts()
                .enrolment(cohort, account)
                .flatMap(place -> stores.accounts().find(account))
                .map(student -> renew(stores, educator, cohort, student)));
    }

    private NewPlace renew(Stores stores, long educator, long cohort, Account student) {
        if (!student.roles().equals(Set.of(Role.STUDENT))) {
            throw new Refused(student.displayName() + " is not only a student and keeps the present password.");
        }
        audit(stores, educator, "link-renewed", cohort, student.id());
        return new NewPlace(student.displayName(), student.loginName(), links.issue(stores, student.id()));
    }

    private NewPlace place(Stores stores, long cohort, String name) {
        Account account = stores.accounts()
                .add(LoginNames.free(stores, name), name, NO_PASSWORD_YET, Set.of(Role.STUDENT), clock.instant());
        Enrolments.enrol(stores, cohort, account.id());
        return new NewPlace(name, account.loginName(), links.issue(stores, account.id()));
    }

    private void audit(Stores stores, long educator, String action, long cohort, long number) {
        stores.audit()
                .add(new AuditEntry(
                        clock.instant(), Optional.of(educator), action, "cohort " + cohort + ": " + number));
    }
}

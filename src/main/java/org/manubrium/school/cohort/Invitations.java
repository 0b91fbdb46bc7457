package org.manubrium.school.cohort;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.manubrium.school.account.Accounts;
import org.manubrium.school.account.NewAccount;
import org.manubrium.school.account.Refused;
import org.manubrium.school.account.SignedIn;
import org.manubrium.security.Role;
import org.manubrium.security.Token;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Cohort;
import org.manubrium.store.Database;
import org.manubrium.store.Enrolment;
import org.manubrium.store.Invitation;
import org.manubrium.store.Stores;

/** A link that a whole cohort may follow to join, for two weeks. */
public final class Invitations {
    private static final Duration LIFETIME = Duration.ofDays(14);
    private static final String OVER =
            "This invitation has expired or been taken back. Ask your educator for a new one.";

    private final Database database;
    private final Accounts accounts;
    private final Clock clock;

    public Invitations(Database database, Accounts accounts, Clock clock) {
        this.database = database;
        this.accounts = accounts;
        this.clock = clock;
    }

    /** A new invitation; earlier ones of this cohort stop working. */
    public Token invite(long educator, long cohort) {
        return database.inTransaction(stores -> {
            Instant now = clock.instant();
            Token token = Token.random();
            stores.invitations().revoke(cohort);
            stores.invitations().add(new Invitation(token.hash(), cohort, now, now.plus(LIFETIME)));
            stores.audit().add(new AuditEntry(now, Optional.of(educator), "invitation-made", "cohort " + cohort));
            return token;
        });
    }

    /** Ends every invitation of a cohort. */
    public void takeBack(long educator, long cohort) {
        database.inTransaction(stores -> {
            stores.invitations().revoke(cohort);
            AuditEntry entry =
                    new AuditEntry(clock.instant(), Optional.of(educator), "invitation-taken-back", "cohort " + cohort);
            stores.audit().add(entry);
            return entry;
        });
    }

    /** The cohort an invitation is to. */
    public Optional<Cohort> cohort(Token token) {
        return database.direct(stores -> cohort(stores, token));
    }

    /**
     * Puts someone who has an account into the cohort; being there already changes nothing.
     *
     * @throws Refused if the invitation is no longer good
     */
    public Enrolment join(Token token, long account) {
        return database.inTransaction(stores -> Enrolments.enrol(stores, open(stores, token), account));
    }

    /**
     * Makes a student's account, puts it into the cohort and signs it in.
     *
     * @throws Refused if the invitation is no longer good or something written will not do
     */
    public SignedIn joinAs(Token token, NewAccount wanted) {
        return accounts.makeAndSignIn(
                wanted,
                Set.of(Role.STUDENT),
                (stores, account) -> Enrolments.enrol(stores, open(stores, token), account.id()));
    }

    private long open(Stores stores, Token token) {
        return cohort(stores, token).orElseThrow(() -> new Refused(OVER)).id();
    }

    private Optional<Cohort> cohort(Stores stores, Token token) {
        return stores.invitations()
                .usable(token.hash(), clock.instant())
                .map(Invitation::cohortId)
                .flatMap(stores.cohorts()::find);
    }
}

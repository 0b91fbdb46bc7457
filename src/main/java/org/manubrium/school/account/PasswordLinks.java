package org.manubrium.school.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.manubrium.security.Account;
import org.manubrium.security.OneTimeLink;
import org.manubrium.security.OneTimeLink.Purpose;
import org.manubrium.security.Passwords;
import org.manubrium.security.Token;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.Stores;

/** Links with which somebody sets a password without having one; each works once, for two weeks. */
public final class PasswordLinks {
    private static final Duration LIFETIME = Duration.ofDays(14);
    private static final String NO_SESSION = "";

    private final Database database;
    private final Passwords passwords;
    private final Sessions sessions;
    private final Clock clock;

    public PasswordLinks(Database database, Passwords passwords, Sessions sessions, Clock clock) {
        this.database = database;
        this.passwords = passwords;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** A new link, within the caller's transaction; earlier ones of this account stop working. */
    public Token issue(Stores stores, long account) {
        Instant now = clock.instant();
        Token token = Token.random();
        stores.links().revoke(account, now);
        stores.links()
                .add(new OneTimeLink(
                        token.hash(), Purpose.SET_PASSWORD, Optional.of(account), now, now.plus(LIFETIME)));
        return token;
    }

    /** Whose password the link still sets. */
    public Optional<Account> owner(Token token) {
        return database.direct(stores -> owner(stores, token));
    }

    /**
     * Sets the password, signs out every browser of the account and opens a session. Uses the link up.
     *
     * @throws Refused if the link is no longer good or the password will not do
     */
    public SignedIn setPassword(Token token, String wanted) {
        passwords.complaint(wanted).ifPresent(sentence -> {
            throw new Refused(sentence);
        });
        String hash = passwords.hash(wanted);
        return database.inTransaction(stores -> {
            Optional<Account> owner = owner(stores, token);
            if (owner.isEmpty() || !stores.links().use(token.hash(), clock.instant())) {
                throw new Refused("This link has been used or has expired. Ask your educator for a new one.");
            }
            return letIn(stores, owner.get(), hash);
        });
    }

    private SignedIn letIn(Stores stores, Account account, String hash) {
        stores.accounts().setPasswordHash(account.id(), hash);
        stores.sessions().endOthers(account.id(), NO_SESSION);
        stores.audit().add(new AuditEntry(clock.instant(), Optional.of(account.id()), "password-set", ""));
        return sessions.open(stores, account);
    }

    private Optional<Account> owner(Stores stores, Token token) {
        return stores.links()
                .usable(token.hash(), clock.instant())
                .filter(link -> link.purpose() == Purpose.SET_PASSWORD)
                .flatMap(OneTimeLink::accountId)
                .flatMap(stores.accounts()::find)
                .filter(Account::active);
    }
}

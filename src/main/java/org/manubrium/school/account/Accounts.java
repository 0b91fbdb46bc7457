package org.manubrium.school.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.manubrium.security.Account;
import org.manubrium.security.OneTimeLink;
import org.manubrium.security.Passwords;
import org.manubrium.security.Role;
import org.manubrium.security.Session;
import org.manubrium.security.Token;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.DuplicateException;
import org.manubrium.store.Stores;

/** Making accounts and changing passwords. What a person got wrong is said in a {@link Refused} sentence. */
public final class Accounts {
    private static final Duration FIRST_LINK_LIFETIME = Duration.ofHours(24);
    private static final Pattern LOGIN_NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]{1,99}");
    private static final int LONGEST_NAME = 200;

    private final Database database;
    private final Passwords passwords;
    private final Sessions sessions;
    private final Clock clock;

    public Accounts(Database database, Passwords passwords, Sessions sessions, Clock clock) {
        this.database = database;
        this.passwords = passwords;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** A one-time link for the first educator if nobody has an account yet; earlier ones stop working. */
    public Optional<Token> firstEducatorLink() {
        return database.inTransaction(
                stores -> stores.accounts().isEmpty() ? Optional.of(firstLink(stores)) : Optional.empty());
    }

    /** Whether this token still makes the first educator's account. */
    public boolean isFirstEducatorLink(Token token) {
        return database.direct(stores -> stores.links().usable(token.hash(), clock.instant()))
                .filter(link -> link.purpose() == OneTimeLink.Purpose.FIRST_EDUCATOR)
                .isPresent();
    }

    /**
     * Makes the first educator's account, who may review too, and signs it in. Uses the link up.
     *
     * @throws Refused if the link is no longer good or something written will not do
     */
    public SignedIn makeFirstEducator(Token link, NewAccount wanted) {
        check(wanted);
        String hash = passwords.hash(wanted.password());
        return database.inTransaction(stores -> {
            if (!stores.links().use(link.hash(), clock.instant())
                    || !stores.accounts().isEmpty()) {
                throw new Refused("This link has been used or has expired. Restart the server to get a new one.");
            }
            return sessions.open(stores, add(stores, wanted, hash, Set.of(Role.EDUCATOR, Role.REVIEWER)));
        });
    }

    /**
     * Makes an account that can sign in.
     *
     * @throws Refused if the login name is taken or something written will not do
     */
    public Account make(NewAccount wanted, Set<Role> roles) {
        check(wanted);
        String hash = passwords.hash(wanted.password());
        try {
            return database.inTransaction(stores -> add(stores, wanted, hash, roles));
        } catch (DuplicateException e) {
            throw new Refused("The sign-in name “" + wanted.loginName() + "” is taken.", e);
        }
    }

    /**
     * Makes an account, does what else belongs to it in the same transaction, and signs it in.
     *
     * @throws Refused if the login name is taken or something written will not do
     */
    public SignedIn makeAndSignIn(NewAccount wanted, Set<Role> roles, BiConsumer<Stores, Account> also) {
        check(wanted);
        String hash = passwords.hash(wanted.password());
        return database.inTransaction(stores -> {
            if (stores.accounts().named(wanted.loginName()).isPresent()) {
                throw taken(wanted);
            }
            Account account = add(stores, wanted, hash, roles);
            also.accept(stores, account);
            return sessions.open(stores, account);
        });
    }

    private static Refused taken(NewAccount wanted) {
        return new Refused("The sign-in name “" + wanted.loginName() + "” is taken.");
    }

    /**
     * Changes one's own password and signs out every other browser.
     *
     * @throws Refused if the present password is wrong or the new one will not do
     */
    public void changePassword(Session session, String present, String wanted) {
        long account = session.account().id();
        refuse(passwords.complaint(wanted));
        String stored = database.direct(stores -> stores.accounts().passwordHash(account));
        if (!passwords.matches(present, stored)) {
            throw new Refused("The present password is not right.");
        }
        String hash = passwords.hash(wanted);
        database.inTransaction(stores -> {
            stores.accounts().setPasswordHash(account, hash);
            stores.sessions().endOthers(account, session.tokenHash());
            return audit(stores, account, "password-changed", "");
        });
    }

    private Token firstLink(Stores stores) {
        Instant now = clock.instant();
        Token token = Token.random();
        stores.links().revoke(OneTimeLink.Purpose.FIRST_EDUCATOR, now);
        stores.links()
                .add(new OneTimeLink(
                        token.hash(),
                        OneTimeLink.Purpose.FIRST_EDUCATOR,
                        Optional.empty(),
                        now,
                        now.plus(FIRST_LINK_LIFETIME)));
        return token;
    }

    private Account add(Stores stores, NewAccount wanted, String hash, Set<Role> roles) {
        Account account = stores.accounts().add(wanted.loginName(), wanted.displayName(), hash, roles, clock.instant());
        audit(stores, account.id(), "account-made", roles.toString());
        return account;
    }

    private AuditEntry audit(Stores stores, long account, String action, String detail) {
        AuditEntry entry = new AuditEntry(clock.instant(), Optional.of(account), action, detail);
        stores.audit().add(entry);
        return entry;
    }

    private void check(NewAccount wanted) {
        if (!LOGIN_NAME.matcher(wanted.loginName()).matches()) {
            throw new Refused("A sign-in name is 2 to 100 letters, digits, dots, hyphens, underscores or @.");
        }
        if (wanted.displayName().isEmpty() || wanted.displayName().length() > LONGEST_NAME) {
            throw new Refused("Write the name that others should see, at most " + LONGEST_NAME + " characters.");
        }
        refuse(passwords.complaint(wanted.password()));
    }

    private static void refuse(Optional<String> complaint) {
        complaint.ifPresent(sentence -> {
            throw new Refused(sentence);
        });
    }
}

package org.manubrium.school.account;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.manubrium.security.Account;
import org.manubrium.security.Passwords;
import org.manubrium.store.Database;

/** Signing in with a name and a password. */
public final class SignIn {
    private final Database database;
    private final Passwords passwords;
    private final Sessions sessions;
    private final Throttle throttle;

    public SignIn(Database database, Passwords passwords, Sessions sessions, Clock clock) {
        this.database = database;
        this.passwords = passwords;
        this.sessions = sessions;
        this.throttle = new Throttle(database, clock);
    }

    /** Tries a name and a password that came from this address. */
    public SignInResult attempt(String loginName, String password, String address) {
        Optional<Duration> wait = throttle.count(loginName, address);
        if (wait.isPresent()) {
            return new SignInResult.Throttled(wait.get());
        }
        return owner(loginName, password)
                .<SignInResult>map(account -> welcome(account, address))
                .orElseGet(SignInResult.Wrong::new);
    }

    private Optional<Account> owner(String loginName, String password) {
        Optional<Account> account =
                database.direct(stores -> stores.accounts().named(loginName)).filter(Account::active);
        if (account.isEmpty()) {
            passwords.matchesNobody(password);
            return account;
        }
        long id = account.get().id();
        String hash = database.direct(stores -> stores.accounts().passwordHash(id));
        return account.filter(known -> passwords.matches(password, hash));
    }

    private SignInResult welcome(Account account, String address) {
        return new SignInResult.Welcome(database.inTransaction(stores -> {
            throttle.forgive(stores, account.loginName(), address);
            return sessions.open(stores, account);
        }));
    }
}

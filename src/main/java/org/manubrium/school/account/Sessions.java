package org.manubrium.school.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.manubrium.security.Account;
import org.manubrium.security.Session;
import org.manubrium.security.Token;
import org.manubrium.store.Database;
import org.manubrium.store.Stores;

/** Sessions of twelve hours: a teaching day, not a week on a ward's shared computer. */
public final class Sessions {
    private static final Duration LIFETIME = Duration.ofHours(12);
    private static final Duration SEEN_GRAIN = Duration.ofMinutes(5);

    private final Database database;
    private final Clock clock;

    public Sessions(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** The session of this cookie, if it is still good. */
    public Optional<Session> find(Token cookie) {
        Instant now = clock.instant();
        Optional<Session> found = database.direct(stores -> stores.sessions().find(cookie.hash(), now));
        found.filter(session -> session.lastSeenAt().plus(SEEN_GRAIN).isBefore(now))
                .ifPresent(session -> touch(session, now));
        return found;
    }

    public void end(Session session) {
        database.inTransaction(stores -> {
            stores.sessions().end(session.tokenHash());
            return stores.sessions().removeExpired(clock.instant());
        });
    }

    /** A new session, within the caller's transaction. */
    SignedIn open(Stores stores, Account account) {
        Instant now = clock.instant();
        Token cookie = Token.random();
        Session session = new Session(cookie.hash(), Token.random().text(), account, now, now.plus(LIFETIME), now);
        stores.sessions().add(session);
        return new SignedIn(cookie, session);
    }

    private void touch(Session session, Instant now) {
        database.inTransaction(stores -> {
            stores.sessions().seen(session.tokenHash(), now);
            return now;
        });
    }
}

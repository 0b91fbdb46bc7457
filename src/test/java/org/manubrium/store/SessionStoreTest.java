package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.manubrium.security.Account;
import org.manubrium.security.Session;
import org.manubrium.security.Token;

class SessionStoreTest {
    private static final Duration HOUR = Duration.ofHours(1);

    @EachDatabase
    void sessionComesBackWholeUntilItExpires(Database database) {
        Session session = add(database, Rows.student(database, "rowan"));

        assertThat(find(database, session, Duration.ZERO)).contains(session);
        assertThat(find(database, session, HOUR.minusMillis(1))).contains(session);
        assertThat(find(database, session, HOUR)).isEmpty();
    }

    @EachDatabase
    void endingTheOthersKeepsOne(Database database) {
        Account rowan = Rows.student(database, "rowan");
        Session kept = add(database, rowan);
        Session other = add(database, rowan);
        Session somebodys = add(database, Rows.student(database, "yarrow"));

        database.inTransaction(stores -> {
            stores.sessions().endOthers(rowan.id(), kept.tokenHash());
            return kept;
        });

        assertThat(find(database, kept, Duration.ZERO)).isPresent();
        assertThat(find(database, other, Duration.ZERO)).isEmpty();
        assertThat(find(database, somebodys, Duration.ZERO)).isPresent();
    }

    @EachDatabase
    void expiredSessionsAreRemovedAndCounted(Database database) {
        add(database, Rows.student(database, "rowan"));

        int early = database.inTransaction(stores -> stores.sessions().removeExpired(Rows.NOON));
        int late = database.inTransaction(stores -> stores.sessions().removeExpired(Rows.NOON.plus(HOUR)));
        assertThat(early).isZero();
        assertThat(late).isEqualTo(1);
    }

    private static Session add(Database database, Account account) {
        Session session = new Session(
                Token.random().hash(), Token.random().text(), account, Rows.NOON, Rows.NOON.plus(HOUR), Rows.NOON);
        return database.inTransaction(stores -> {
            stores.sessions().add(session);
            return session;
        });
    }

    private static Optional<Session> find(Database database, Session session, Duration later) {
        return database.direct(stores -> stores.sessions().find(session.tokenHash(), Rows.NOON.plus(later)));
    }
}

package org.manubrium.school.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.manubrium.security.ThrottlePolicy;
import org.manubrium.security.ThrottlePolicy.Counter;
import org.manubrium.security.Token;
import org.manubrium.store.Database;
import org.manubrium.store.Stores;

/**
 * Counts attempts to sign in, by account name and by address, in the database: several servers count together. An attempt
 * is counted before its password is looked at, so that many at once do not slip through.
 */
final class Throttle {
    private final Database database;
    private final Clock clock;

    Throttle(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Counts one attempt; how long to wait if it is one too many. */
    Optional<Duration> count(String loginName, String address) {
        return database.inTransaction(stores -> Stream.of(
                        count(stores, account(loginName), ThrottlePolicy.ACCOUNT),
                        count(stores, address(address), ThrottlePolicy.ADDRESS))
                .flatMap(Optional::stream)
                .max(Duration::compareTo));
    }

    /**
     * Takes back what was counted when it turns out that the account's owner signed in: a classroom behind one address
     * does not use up its attempts by being right.
     */
    void forgive(Stores stores, String loginName, String address) {
        stores.throttle().clear(account(loginName));
        String subject = address(address);
        stores.throttle().lock(subject).ifPresent(counter -> stores.throttle().set(subject, counter.less()));
        stores.throttle().removeOlderThan(clock.instant().minus(ThrottlePolicy.ADDRESS.window()));
    }

    private Optional<Duration> count(Stores stores, String subject, ThrottlePolicy policy) {
        Instant now = clock.instant();
        Optional<Counter> before = stores.throttle().lock(subject);
        Counter after = policy.after(before.orElseGet(() -> new Counter(0, now)), now);
        if (before.isEmpty()) {
            stores.throttle().add(subject, after);
        } else {
            stores.throttle().set(subject, after);
        }
        return policy.refuses(after) ? Optional.of(policy.wait(after, now)) : Optional.empty();
    }

    private static String account(String loginName) {
        return Token.sha256("account " + loginName.toLowerCase(Locale.ROOT));
    }

    private static String address(String address) {
        return Token.sha256("address " + address);
    }
}

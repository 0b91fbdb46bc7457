package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.manubrium.security.OneTimeLink;
import org.manubrium.security.OneTimeLink.Purpose;
import org.manubrium.security.Token;

class LinkStoreTest {
    private static final Instant EXPIRY = Rows.NOON.plus(Duration.ofHours(24));

    @EachDatabase
    void linkWorksOnce(Database database) {
        OneTimeLink link = add(database);

        assertThat(usable(database, link, Rows.NOON)).contains(link);
        assertThat(use(database, link, Rows.NOON)).isTrue();
        assertThat(use(database, link, Rows.NOON)).isFalse();
        assertThat(usable(database, link, Rows.NOON)).isEmpty();
    }

    @EachDatabase
    void linkEndsWithItsTime(Database database) {
        OneTimeLink link = add(database);

        assertThat(use(database, link, EXPIRY)).isFalse();
        assertThat(use(database, link, EXPIRY.minusMillis(1))).isTrue();
    }

    @EachDatabase
    void revokedLinkDoesNotWork(Database database) {
        OneTimeLink link = add(database);
        database.inTransaction(stores -> {
            stores.links().revoke(Purpose.FIRST_EDUCATOR, Rows.NOON);
            return link;
        });

        assertThat(use(database, link, Rows.NOON)).isFalse();
    }

    private static OneTimeLink add(Database database) {
        OneTimeLink link =
                new OneTimeLink(Token.random().hash(), Purpose.FIRST_EDUCATOR, Optional.empty(), Rows.NOON, EXPIRY);
        return database.inTransaction(stores -> {
            stores.links().add(link);
            return link;
        });
    }

    private static boolean use(Database database, OneTimeLink link, Instant now) {
        return database.inTransaction(stores -> stores.links().use(link.tokenHash(), now));
    }

    private static Optional<OneTimeLink> usable(Database database, OneTimeLink link, Instant now) {
        return database.direct(stores -> stores.links().usable(link.tokenHash(), now));
    }
}

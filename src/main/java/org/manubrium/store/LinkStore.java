package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.manubrium.security.OneTimeLink;

/** Links that work once. */
public final class LinkStore {
    private final Handle handle;

    LinkStore(Handle handle) {
        this.handle = handle;
    }

    public void add(OneTimeLink link) {
        handle.createUpdate("insert into one_time_link (token_hash, purpose, account_id, created_at, expires_at)"
                        + " values (:hash, :purpose, :account, :created, :expires)")
                .bind("hash", link.tokenHash())
                .bind("purpose", link.purpose().name())
                .bind("account", link.accountId())
                .bind("created", link.createdAt())
                .bind("expires", link.expiresAt())
                .execute();
    }

    /** The link of this token if it can still be used. */
    public Optional<OneTimeLink> usable(String tokenHash, Instant now) {
        return handle.createQuery("select token_hash, purpose, account_id, created_at, expires_at from one_time_link"
                        + " where token_hash = :hash and used_at is null and expires_at > :now")
                .bind("hash", tokenHash)
                .bind("now", now)
                .mapTo(OneTimeLink.class)
                .findOne();
    }

    /** Uses the link up. False if it was used before, has expired or never was: of two at once, one gets true. */
    public boolean use(String tokenHash, Instant now) {
        return handle.execute(
                        "update one_time_link set used_at = ?"
                                + " where token_hash = ? and used_at is null and expires_at > ?",
                        now,
                        tokenHash,
                        now)
                == 1;
    }

    /** Makes every unused link of this account useless. */
    public void revoke(long account, Instant now) {
        handle.execute("update one_time_link set used_at = ? where account_id = ? and used_at is null", now, account);
    }

    /** Makes every unused link of this purpose useless. */
    public void revoke(OneTimeLink.Purpose purpose, Instant now) {
        handle.execute(
                "update one_time_link set used_at = ? where purpose = ? and used_at is null", now, purpose.name());
    }
}

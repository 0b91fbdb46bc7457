package org.manubrium.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.manubrium.security.Session;

/** Who is signed in. Rows, not memory: any server of the same database knows them. */
public final class SessionStore {
    private final Handle handle;

    SessionStore(Handle handle) {
        this.handle = handle;
    }

    public void add(Session session) {
        handle.createUpdate(
                        "insert into session (token_hash, csrf_token, account_id, created_at, expires_at, last_seen_at)"
                                + " values (:hash, :csrf, :account, :created, :expires, :seen)")
                .bind("hash", session.tokenHash())
                .bind("csrf", session.csrfToken())
                .bind("account", session.account().id())
                .bind("created", session.createdAt())
                .bind("expires", session.expiresAt())
                .bind("seen", session.lastSeenAt())
                .execute();
    }

    /** The session of this cookie, unless it has expired or its account is no longer active. */
    public Optional<Session> find(String tokenHash, Instant now) {
        return handle.createQuery("select s.token_hash, s.csrf_token, s.created_at, s.expires_at, s.last_seen_at, "
                        + AccountRows.COLUMNS
                        + " from session s join account a on a.id = s.account_id"
                        + " where s.token_hash = :hash and s.expires_at > :now and a.active")
                .bind("hash", tokenHash)
                .bind("now", now)
                .map((row, context) -> session(row))
                .findOne();
    }

    public void seen(String tokenHash, Instant now) {
        handle.execute("update session set last_seen_at = ? where token_hash = ?", now, tokenHash);
    }

    public void end(String tokenHash) {
        handle.execute("delete from session where token_hash = ?", tokenHash);
    }

    /** Signs this account out everywhere else. */
    public void endOthers(long account, String keptTokenHash) {
        handle.execute("delete from session where account_id = ? and token_hash <> ?", account, keptTokenHash);
    }

    /** Removes what has expired; how many rows. */
    public int removeExpired(Instant now) {
        return handle.execute("delete from session where expires_at <= ?", now);
    }

    private static Session session(ResultSet row) throws SQLException {
        return new Session(
                row.getString("token_hash"),
                row.getString("csrf_token"),
                AccountRows.account(row),
                instant(row, "created_at"),
                instant(row, "expires_at"),
                instant(row, "last_seen_at"));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}

package org.manubrium.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Invitations to cohorts. */
public final class InvitationStore {
    private final Handle handle;

    InvitationStore(Handle handle) {
        this.handle = handle;
    }

    public void add(Invitation invitation) {
        handle.createUpdate("insert into invitation (token_hash, cohort_id, created_at, expires_at)"
                        + " values (:tokenHash, :cohortId, :createdAt, :expiresAt)")
                .bindMethods(invitation)
                .execute();
    }

    /** The invitation of this token, unless it has expired. */
    public Optional<Invitation> usable(String tokenHash, Instant now) {
        return handle.createQuery("select token_hash, cohort_id, created_at, expires_at from invitation"
                        + " where token_hash = :hash and expires_at > :now")
                .bind("hash", tokenHash)
                .bind("now", now)
                .mapTo(Invitation.class)
                .findOne();
    }

    /** Ends every invitation of a cohort. */
    public void revoke(long cohort) {
        handle.execute("delete from invitation where cohort_id = ?", cohort);
    }
}

package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Cases being written. */
public final class DraftStore {
    private static final String DRAFT = "select id, owner_id, title, yaml, updated_at from case_draft";

    private final Handle handle;

    DraftStore(Handle handle) {
        this.handle = handle;
    }

    public CaseDraft add(long owner, String title, String yaml, Instant now) {
        long id = handle.createUpdate("insert into case_draft (owner_id, title, yaml, updated_at)"
                        + " values (:owner, :title, :yaml, :now)")
                .bind("owner", owner)
                .bind("title", title)
                .bind("yaml", yaml)
                .bind("now", now)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return new CaseDraft(id, owner, title, yaml, now);
    }

    /** Writes title, text and time of an existing draft. */
    public void set(CaseDraft draft) {
        handle.createUpdate(
                        "update case_draft set title = :title, yaml = :yaml, updated_at = :updatedAt where id = :id")
                .bindMethods(draft)
                .execute();
    }

    /**
     * Writes title, text and time of a draft that has not been touched since {@code seen}. False if it has: of two at
     * once, one gets true.
     */
    public boolean replace(CaseDraft draft, Instant seen) {
        return handle.createUpdate("update case_draft set title = :title, yaml = :yaml, updated_at = :updatedAt"
                                + " where id = :id and updated_at = :seen")
                        .bindMethods(draft)
                        .bind("seen", seen)
                        .execute()
                == 1;
    }

    public Optional<CaseDraft> find(long id) {
        return handle.createQuery(DRAFT + " where id = :id")
                .bind("id", id)
                .mapTo(CaseDraft.class)
                .findOne();
    }

    /** One educator's drafts, the last touched first. */
    public List<CaseDraft> of(long owner) {
        return handle.createQuery(DRAFT + " where owner_id = :owner order by updated_at desc, id desc")
                .bind("owner", owner)
                .mapTo(CaseDraft.class)
                .list();
    }

    public void remove(long id) {
        handle.execute("delete from case_draft where id = ?", id);
    }
}

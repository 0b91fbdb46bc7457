package org.manubrium.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** What was done, by whom, when. Only ever added to. */
public final class AuditStore {
    private final Handle handle;

    AuditStore(Handle handle) {
        this.handle = handle;
    }

    public void add(AuditEntry entry) {
        handle.createUpdate("insert into audit (happened_at, account_id, action, detail)"
                        + " values (:at, :account, :action, :detail)")
                .bind("at", entry.happenedAt())
                .bind("account", entry.accountId())
                .bind("action", entry.action())
                .bind("detail", entry.detail())
                .execute();
    }

    /** The newest first. */
    public List<AuditEntry> latest(int count) {
        return handle.createQuery(
                        "select happened_at, account_id, action, detail from audit order by id desc limit :count")
                .bind("count", count)
                .mapTo(AuditEntry.class)
                .list();
    }
}

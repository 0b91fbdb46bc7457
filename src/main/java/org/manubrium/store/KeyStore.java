package org.manubrium.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The keys that replace those of case versions. They are added, never changed; the newest is in force. */
public final class KeyStore {
    private static final String CORRECTION =
            "select id, case_version_id, compiled_key, tables_hash, what, reason, made_by, made_at from key_correction";

    private final Handle handle;

    KeyStore(Handle handle) {
        this.handle = handle;
    }

    /** Adds it under a new id, whatever id it carries. */
    public KeyCorrection add(KeyCorrection made) {
        long id = handle.createUpdate("insert into key_correction"
                        + " (case_version_id, compiled_key, tables_hash, what, reason, made_by, made_at)"
                        + " values (:caseVersionId, :compiledKey, :tablesHash, :what, :reason, :madeBy, :madeAt)")
                .bindMethods(made)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(id).orElseThrow();
    }

    public Optional<KeyCorrection> find(long id) {
        return handle.createQuery(CORRECTION + " where id = :id")
                .bind("id", id)
                .mapTo(KeyCorrection.class)
                .findOne();
    }

    /** The correction in force; empty while the version's own key is. */
    public Optional<Long> inForce(long caseVersion) {
        return handle.createQuery("select max(id) from key_correction where case_version_id = :version")
                .bind("version", caseVersion)
                .mapTo(Long.class)
                .findOne();
    }

    /** Every correction of a version, the newest first. */
    public List<KeyCorrection> of(long caseVersion) {
        return handle.createQuery(CORRECTION + " where case_version_id = :version order by id desc")
                .bind("version", caseVersion)
                .mapTo(KeyCorrection.class)
                .list();
    }
}

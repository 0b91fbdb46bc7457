package org.manubrium.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Cases and their versions. There is no way here to change a version. */
public final class CaseStore {
    private static final String CASE = "select id, slug, title from case_file";
    private static final String VERSION =
            "select id, case_id, version, yaml, compiled_key, tables_hash, published_by, published_at from case_version";

    private static final String LINE = "select v.id, v.case_id, c.title, v.version, v.published_by, v.published_at"
            + " from case_version v join case_file c on c.id = v.case_id";

    private final Handle handle;

    CaseStore(Handle handle) {
        this.handle = handle;
    }

    /** The case with this slug, made if it is not there; an existing one takes the new title. */
    public CaseFile named(String slug, String title) {
        handle.execute("update case_file set title = ? where slug = ?", title, slug);
        return bySlug(slug).orElseGet(() -> add(slug, title, false));
    }

    /** A case under which a draft is tried; it is in no list. */
    public CaseFile scratch(String slug, String title) {
        return bySlug(slug).orElseGet(() -> add(slug, title, true));
    }

    public Optional<CaseFile> bySlug(String slug) {
        return handle.createQuery(CASE + " where slug = :slug")
                .bind("slug", slug)
                .mapTo(CaseFile.class)
                .findOne();
    }

    public Optional<CaseFile> find(long id) {
        return handle.createQuery(CASE + " where id = :id")
                .bind("id", id)
                .mapTo(CaseFile.class)
                .findOne();
    }

    /** Whether a case is only a draft being tried. */
    public boolean isScratch(long id) {
        return handle.createQuery("select scratch from case_file where id = :id")
                .bind("id", id)
                .mapTo(Boolean.class)
                .findOne()
                .orElse(false);
    }

    /** Every case but scratch ones, by title. */
    public List<CaseFile> all() {
        return handle.createQuery(CASE + " where not scratch order by title, id")
                .mapTo(CaseFile.class)
                .list();
    }

    /** Adds the next version of its case. */
    public CaseVersion publish(NewCaseVersion made) {
        int version = latest(made.caseId()).map(CaseVersion::version).orElse(0) + 1;
        long id = handle.createUpdate("insert into case_version"
                        + " (case_id, version, yaml, compiled_key, tables_hash, published_by, published_at)"
                        + " values (:caseId, :version, :yaml, :compiledKey, :tablesHash, :publishedBy, :publishedAt)")
                .bindMethods(made)
                .bind("version", version)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return version(id).orElseThrow();
    }

    public Optional<CaseVersion> version(long id) {
        return handle.createQuery(VERSION + " where id = :id")
                .bind("id", id)
                .mapTo(CaseVersion.class)
                .findOne();
    }

    /** The line of a version, which is all that a list needs. */
    public Optional<VersionLine> line(long version) {
        return handle.createQuery(LINE + " where v.id = :id")
                .bind("id", version)
                .mapTo(VersionLine.class)
                .findOne();
    }

    /** The lines of all versions of a case, the newest first. */
    public List<VersionLine> lines(long caseId) {
        return handle.createQuery(LINE + " where v.case_id = :case order by v.version desc")
                .bind("case", caseId)
                .mapTo(VersionLine.class)
                .list();
    }

    /** The newest version of a case. */
    public Optional<CaseVersion> latest(long caseId) {
        return handle.createQuery(VERSION + " where case_id = :case order by version desc limit 1")
                .bind("case", caseId)
                .mapTo(CaseVersion.class)
                .findOne();
    }

    /** All versions of a case, the newest first. */
    public List<CaseVersion> versions(long caseId) {
        return handle.createQuery(VERSION + " where case_id = :case order by version desc")
                .bind("case", caseId)
                .mapTo(CaseVersion.class)
                .list();
    }

    private CaseFile add(String slug, String title, boolean scratch) {
        long id = handle.createUpdate("insert into case_file (slug, title, scratch) values (:slug, :title, :scratch)")
                .bind("slug", slug)
                .bind("title", title)
                .bind("scratch", scratch)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return new CaseFile(id, slug, title);
    }
}

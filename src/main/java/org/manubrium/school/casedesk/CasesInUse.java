package org.manubrium.school.casedesk;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.manubrium.casefile.CaseReading;
import org.manubrium.school.account.Refused;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.CaseDraft;
import org.manubrium.store.CaseFile;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Database;
import org.manubrium.store.NewCaseVersion;
import org.manubrium.store.Stores;

/** Cases in use. A version holds its text, its compiled key and the state of the tables, and never changes. */
public final class CasesInUse {
    private final Database database;
    private final CaseCheck check;
    private final Clock clock;

    public CasesInUse(Database database, CaseCheck check, Clock clock) {
        this.database = database;
        this.check = check;
        this.clock = clock;
    }

    /** Every case, by title. */
    public List<CaseOnShelf> all() {
        return database.direct(stores ->
                stores.cases().all().stream().map(file -> shelf(stores, file)).toList());
    }

    /** The case that has this slug already: a text with it becomes its next version. */
    public Optional<CaseOnShelf> named(String slug) {
        return database.direct(stores -> stores.cases().bySlug(slug).map(file -> shelf(stores, file)));
    }

    /** A case with its versions; drafts being tried are not among them. */
    public Optional<CaseOnShelf> find(long caseId) {
        return database.direct(stores -> stores.cases()
                .find(caseId)
                .filter(file -> !stores.cases().isScratch(file.id()))
                .map(file -> shelf(stores, file)));
    }

    /** A version that is in use. */
    public Optional<CaseVersion> version(long id) {
        return database.direct(stores ->
                stores.cases().version(id).filter(version -> !stores.cases().isScratch(version.caseId())));
    }

    /**
     * Puts a draft in use as the next version of its case. The draft is gone then: its text is the version's.
     *
     * @throws Refused if it has a problem, was changed after {@code seen}, or says what the newest version says
     */
    public CaseVersion putInUse(CaseDraft draft, Instant seen) {
        refuseStale(draft, seen);
        Ready ready = ready(draft.yaml());
        return database.inTransaction(stores -> {
            refuseStale(stores.drafts().find(draft.id()).orElse(draft), seen);
            CaseVersion made = publish(stores, ready, Optional.of(draft.ownerId()));
            stores.drafts().remove(draft.id());
            return made;
        });
    }

    /**
     * Puts cases that come with the programme in use, in this order.
     *
     * @throws Refused if one has a problem or is in use already
     */
    public List<CaseVersion> putInUse(List<String> texts) {
        List<Ready> ready = texts.parallelStream().map(this::ready).toList();
        return database.inTransaction(stores -> ready.stream()
                .map(one -> publish(stores, one, Optional.empty()))
                .toList());
    }

    /** A version's text as a new draft. */
    public CaseDraft revise(long educator, CaseVersion version) {
        return database.inTransaction(stores -> {
            String title =
                    stores.cases().find(version.caseId()).map(CaseFile::title).orElseThrow();
            return stores.drafts().add(educator, title, version.yaml(), clock.instant());
        });
    }

    /** Opens an educator's own attempt at a version; it counts nowhere. */
    public long tryOut(long educator, CaseVersion version) {
        return database.inTransaction(stores -> stores.attempts().startTrial(educator, version.id(), clock.instant()))
                .id();
    }

    /**
     * Opens an educator's own attempt at a draft; it counts nowhere.
     *
     * @throws Refused if the draft has a problem
     */
    public long tryOut(CaseDraft draft) {
        Ready ready = ready(draft.yaml());
        return database.inTransaction(stores -> {
            CaseFile scratch = stores.cases()
                    .scratch(
                            "draft-" + draft.id() + "-being-tried", ready.file().title());
            CaseVersion version = stores.cases()
                    .latest(scratch.id())
                    .filter(ready::isSameAs)
                    .orElseGet(
                            () -> stores.cases().publish(ready.version(scratch, Optional.of(draft.ownerId()), clock)));
            return stores.attempts()
                    .startTrial(draft.ownerId(), version.id(), clock.instant())
                    .id();
        });
    }

    private Ready ready(String text) {
        CaseReading reading = check.read(text);
        return reading.caseFile()
                .map(file -> new Ready(file, text, check.key(file), check.tablesHash()))
                .orElseThrow(() -> new Refused("This case has problems. Mend them first."));
    }

    private static void refuseStale(CaseDraft draft, Instant seen) {
        if (!draft.updatedAt().equals(seen)) {
            throw new Refused("The draft was changed in another tab after you opened it here. Look at it again first.");
        }
    }

    private CaseVersion publish(Stores stores, Ready ready, Optional<Long> by) {
        CaseFile file = stores.cases().named(ready.file().slug(), ready.file().title());
        stores.cases().latest(file.id()).filter(ready::isSameAs).ifPresent(same -> {
            throw new Refused("Version " + same.version() + " in use says the same already.");
        });
        CaseVersion made = stores.cases().publish(ready.version(file, by, clock));
        stores.audit()
                .add(new AuditEntry(
                        clock.instant(), by, "case-put-in-use", file.slug() + " version " + made.version()));
        return made;
    }

    private static CaseOnShelf shelf(Stores stores, CaseFile file) {
        return new CaseOnShelf(file, stores.cases().lines(file.id()));
    }

    /** A text without a problem, with everything that a version holds. */
    private record Ready(org.manubrium.casefile.CaseFile file, String text, String key, String tablesHash) {
        boolean isSameAs(CaseVersion version) {
            return version.yaml().equals(text) && version.tablesHash().equals(tablesHash);
        }

        NewCaseVersion version(CaseFile of, Optional<Long> by, Clock clock) {
            return new NewCaseVersion(of.id(), text, key, tablesHash, by, clock.instant());
        }
    }
}

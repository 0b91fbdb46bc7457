package org.manubrium.school.casedesk;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.manubrium.school.Misfilled;
import org.manubrium.store.CaseDraft;
import org.manubrium.store.Database;

/** Cases being written. A draft is its owner's: for everybody else it does not exist. */
public final class Drafts {
    private static final Pattern TITLE = Pattern.compile("(?m)^title:[ \\t]*[\"']?([^\\n\"']{1,200})");
    private static final String UNTITLED = "Untitled draft";

    private final Database database;
    private final Clock clock;

    public Drafts(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** One educator's drafts, the last touched first. */
    public List<CaseDraft> of(long owner) {
        return database.direct(stores -> stores.drafts().of(owner));
    }

    public Optional<CaseDraft> find(long owner, long id) {
        return database.direct(stores -> stores.drafts().find(id)).filter(draft -> draft.ownerId() == owner);
    }

    /**
     * Keeps a text as a new draft, whatever is wrong with it.
     *
     * @throws Misfilled if there is nothing to keep
     */
    public CaseDraft begin(long owner, String sent) {
        String text = CaseText.tidy(sent);
        String title = title(text);
        return database.inTransaction(stores -> stores.drafts().add(owner, title, text, clock.instant()));
    }

    /**
     * Keeps a new text of a draft, unless the draft was changed after {@code seen}.
     *
     * @throws Misfilled if there is nothing to keep
     */
    public Saving save(CaseDraft draft, Instant seen, String sent) {
        String text = CaseText.tidy(sent);
        CaseDraft wanted = new CaseDraft(draft.id(), draft.ownerId(), title(text), text, clock.instant());
        return database.inTransaction(stores -> {
            if (stores.drafts().replace(wanted, seen)) {
                return new Saving.Kept(wanted);
            }
            return new Saving.Stale(stores.drafts().find(draft.id()).orElse(draft), text);
        });
    }

    public void discard(CaseDraft draft) {
        database.inTransaction(stores -> {
            stores.drafts().remove(draft.id());
            return draft;
        });
    }

    /** Read off the text itself, which may be too faulty to be read as a case. */
    private static String title(String text) {
        Matcher title = TITLE.matcher(text);
        return title.find() && !title.group(1).isBlank() ? title.group(1).strip() : UNTITLED;
    }
}

package org.manubrium.school.casedesk;

import org.manubrium.store.CaseDraft;

/** What became of saving a draft. */
public sealed interface Saving {
    /** It is kept. */
    record Kept(CaseDraft draft) implements Saving {}

    /** It was changed elsewhere since it was last seen: {@code other} is what stands there now, {@code text} what was sent. */
    record Stale(CaseDraft other, String text) implements Saving {}
}

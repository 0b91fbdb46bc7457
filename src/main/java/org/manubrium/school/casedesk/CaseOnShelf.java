package org.manubrium.school.casedesk;

import java.util.List;
import java.util.Optional;
import org.manubrium.store.CaseFile;
import org.manubrium.store.CaseVersion;

/** A case in use with its versions, the newest first. */
public record CaseOnShelf(CaseFile file, List<CaseVersion> versions) {
    public CaseOnShelf {
        versions = List.copyOf(versions);
    }

    /** The version that is set from now on. */
    public Optional<CaseVersion> newest() {
        return versions.stream().findFirst();
    }
}

package org.manubrium.school.casedesk;

import java.util.List;
import java.util.Optional;
import org.manubrium.store.CaseFile;
import org.manubrium.store.VersionLine;

/** A case in use with its versions, the newest first. */
public record CaseOnShelf(CaseFile file, List<VersionLine> versions) {
    public CaseOnShelf {
        versions = List.copyOf(versions);
    }

    /** The version that is set from now on. */
    public Optional<VersionLine> newest() {
        return versions.stream().findFirst();
    }
}

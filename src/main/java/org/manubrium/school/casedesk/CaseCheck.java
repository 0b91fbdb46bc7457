package org.manubrium.school.casedesk;

import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseReading;
import org.manubrium.tables.Reference;

/** Reads cases against the tables in force, and freezes those without a problem. */
public final class CaseCheck {
    private static final String PATH = "case";

    private final Reference reference;
    private final KeyMaker keys;

    public CaseCheck(Reference reference, KeyMaker keys) {
        this.reference = reference;
        this.keys = keys;
    }

    /** The case, or its problems by line. */
    public CaseReading read(String text) {
        return CaseFile.read(text, PATH, reference);
    }

    /** The compiled key of a case without a problem, as JSON. */
    String key(CaseFile file) {
        return keys.keyOf(file);
    }

    /** Names the state of the tables. */
    String tablesHash() {
        return reference.hash();
    }
}

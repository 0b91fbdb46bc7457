package org.manubrium.school.casedesk;

import org.manubrium.casefile.CaseFile;

/** Compiles the key of a case. */
@FunctionalInterface
public interface KeyMaker {
    /** The compiled key as JSON. */
    String keyOf(CaseFile file);
}

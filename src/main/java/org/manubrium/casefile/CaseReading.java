package org.manubrium.casefile;

import java.util.List;
import java.util.Optional;

/** What came of reading a case file: the case if there is no problem, else every problem by line. */
public record CaseReading(Optional<CaseFile> caseFile, List<Problem> problems) {}

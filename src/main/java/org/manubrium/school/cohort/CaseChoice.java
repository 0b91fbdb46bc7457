package org.manubrium.school.cohort;

/** A case that can be set, in its newest version. */
public record CaseChoice(long versionId, String title, int version) {}

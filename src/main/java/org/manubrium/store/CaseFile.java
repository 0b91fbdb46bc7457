package org.manubrium.store;

/** A case through all its versions. */
public record CaseFile(long id, String slug, String title) {}

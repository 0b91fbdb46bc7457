package org.manubrium.school.cohort;

/** A teaching convention that a cohort may be marked under. */
public record Convention(String id, String name) {}

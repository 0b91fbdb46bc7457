package org.manubrium.tables;

/** Something that can be done after the examination. */
public record NextStep(String id, String name, String source, String confidence) {}

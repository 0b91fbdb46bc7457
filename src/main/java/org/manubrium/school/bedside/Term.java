package org.manubrium.school.bedside;

/** Something that can be chosen as an answer. */
public record Term(String id, String name) {}

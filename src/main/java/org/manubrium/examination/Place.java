package org.manubrium.examination;

/** What one reading of a manoeuvre is about when it has several: a point of the skin, a pressure, a moment. */
public record Place(String id, String name) {}

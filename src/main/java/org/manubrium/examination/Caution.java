package org.manubrium.examination;

/** Where a manoeuvre can hurt, and what to do about it. */
public record Caution(String id, String text, String source, String confidence) {}

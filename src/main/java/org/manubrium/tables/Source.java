package org.manubrium.tables;

/** One text that rows refer to; {@code standing} says who saw it. */
public record Source(String id, String citation, String standing, String note) {}

package org.manubrium.anatomy;

/** A muscle and the most distal station of its nerve; its roots stand among the {@link RootShare}s under its id. */
public record Muscle(String id, String name, String station, String source, String confidence) {}

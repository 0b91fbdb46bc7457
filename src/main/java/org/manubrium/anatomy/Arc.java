package org.manubrium.anatomy;

/** A reflex arc: the station its fibres run through and the muscle that answers; its roots stand under its id. */
public record Arc(
        String id, String name, String station, String muscle, String area, String source, String confidence) {}

package org.manubrium.anatomy;

import java.util.Optional;

/** One stretch of a peripheral nerve or plexus, and the stretch nearer the cord that feeds it. */
public record Station(
        String id,
        String structure,
        Optional<String> level,
        Optional<String> parent,
        String source,
        String confidence) {}

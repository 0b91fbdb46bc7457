package org.manubrium.school.mark;

import java.time.Instant;

/** An educator's confirmation of a fact that is in force: who, when and why. */
public record FactConfirmed(long id, String who, Instant when, String why) {}

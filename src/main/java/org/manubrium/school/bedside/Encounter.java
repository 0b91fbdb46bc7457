package org.manubrium.school.bedside;

import java.util.List;

/** An attempt as its student may see it. */
public record Encounter(
        long attempt, boolean handedIn, Known patient, BedsideTime clock, Choices choices, List<Shown> events) {}

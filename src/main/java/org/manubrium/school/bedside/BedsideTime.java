package org.manubrium.school.bedside;

/** The simulated time at the bedside, in seconds, and how the patient lies now. */
public record BedsideTime(int bedside, String position) {}

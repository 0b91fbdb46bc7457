package org.manubrium.patient;

/**
 * What time does to a descending lesion: the share of it that shows as shock and as release, so many days after onset.
 * Between two rows both shares are interpolated.
 */
public record Course(String division, double days, double shock, double release, String source, String confidence) {}

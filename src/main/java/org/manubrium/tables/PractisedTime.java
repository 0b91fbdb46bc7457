package org.manubrium.tables;

/** How long a full routine examination takes one who has practised, in seconds. */
public record PractisedTime(int least, int most, String source, String confidence) {}

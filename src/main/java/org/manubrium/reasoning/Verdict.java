package org.manubrium.reasoning;

/**
 * What a manoeuvre is worth in one case.
 *
 * @param bits the most that one step of it is expected to tell, by itself, before anything else is examined
 */
public record Verdict(String manoeuvre, Worth worth, double bits, String reason) {}

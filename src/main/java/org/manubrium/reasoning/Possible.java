package org.manubrium.reasoning;

/**
 * One possible diagnosis.
 *
 * @param prior its chance before anything is examined, 0..1; all of a case add up to 1
 * @param holds whether it is what ails the patient
 */
public record Possible(String id, String name, double prior, boolean holds) {}

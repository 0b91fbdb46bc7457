package org.manubrium.store;

/**
 * One student in one cohort.
 *
 * @param displayName the student's own name, for those who may see it
 * @param pseudonym the name a leaderboard shows; unique in its cohort
 */
public record Enrolment(long cohortId, long accountId, String displayName, String pseudonym) {}

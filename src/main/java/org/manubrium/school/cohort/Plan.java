package org.manubrium.school.cohort;

/** What an educator decides about a cohort. */
public record Plan(String name, String convention, boolean leaderboardOn, boolean pseudonyms) {
    public Plan {
        name = name.strip();
    }
}

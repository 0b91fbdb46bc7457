package org.manubrium.school.review;

/** A student under the name that the review shows: the pseudonym if the cohort uses pseudonyms. */
public record Student(long account, String shownAs) {}

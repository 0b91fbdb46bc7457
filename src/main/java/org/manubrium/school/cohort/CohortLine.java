package org.manubrium.school.cohort;

import org.manubrium.store.Cohort;

/** A cohort in a list: with how many students and set cases. */
public record CohortLine(Cohort cohort, int students, int setCases) {}

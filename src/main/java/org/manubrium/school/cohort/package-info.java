/**
 * Cohorts: making one, who is in it and how they get in, the teaching convention, the cases set. Doors:
 * {@link org.manubrium.school.cohort.Cohorts}, {@link org.manubrium.school.cohort.Rosters},
 * {@link org.manubrium.school.cohort.Invitations} and {@link org.manubrium.school.cohort.SetWork}.
 */
@NullMarked
package org.manubrium.school.cohort;

import org.jspecify.annotations.NullMarked;

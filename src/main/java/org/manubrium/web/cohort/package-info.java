/**
 * The educator's pages of cohorts, and the pages on which a student joins one. Doors:
 * {@link org.manubrium.web.cohort.CohortPages}, {@link org.manubrium.web.cohort.RosterPages},
 * {@link org.manubrium.web.cohort.SetWorkPages} and {@link org.manubrium.web.cohort.JoinPages}.
 */
@NullMarked
package org.manubrium.web.cohort;

import org.jspecify.annotations.NullMarked;

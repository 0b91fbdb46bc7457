/**
 * How a cohort is doing: the lines of the mark sheets side by side, the wrong answers, the leaderboard, and all of it as
 * CSV. Reads only. Door: {@link org.manubrium.school.review.Reviews}.
 */
@NullMarked
package org.manubrium.school.review;

import org.jspecify.annotations.NullMarked;

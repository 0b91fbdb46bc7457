/**
 * What people do here: put a case in use, set work, attempt, hand in, mark again, look at a cohort. The only owner of
 * transactions.
 */
@NullMarked
package org.manubrium.school;

import org.jspecify.annotations.NullMarked;

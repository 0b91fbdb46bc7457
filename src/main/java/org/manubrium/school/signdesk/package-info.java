/**
 * The sign desk: one sign over its range, in health and beside what a condition makes of it. Door:
 * {@link org.manubrium.school.signdesk.SignDesk}.
 */
@NullMarked
package org.manubrium.school.signdesk;

import org.jspecify.annotations.NullMarked;

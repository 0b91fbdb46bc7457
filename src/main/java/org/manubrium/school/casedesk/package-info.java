/**
 * The case desk: drafts, their problems, trying one as a student, and putting a case in use as a version that never
 * changes. Doors: {@link org.manubrium.school.casedesk.Drafts} and {@link org.manubrium.school.casedesk.CasesInUse}.
 */
@NullMarked
package org.manubrium.school.casedesk;

import org.jspecify.annotations.NullMarked;

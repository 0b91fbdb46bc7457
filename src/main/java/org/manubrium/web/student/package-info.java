/**
 * The student's pages: what is set, the bedside, the debrief. The bedside reaches {@code school.bedside} and nothing else
 * that knows the patient.
 */
@NullMarked
package org.manubrium.web.student;

import org.jspecify.annotations.NullMarked;

/**
 * The encounter: a student, an invented patient and the events between them. The door is
 * {@link org.manubrium.school.bedside.Bedside}. What it hands out can be shown to the student while the attempt is open:
 * no meaning, no condition and no key is reachable from it.
 */
@NullMarked
package org.manubrium.school.bedside;

import org.jspecify.annotations.NullMarked;

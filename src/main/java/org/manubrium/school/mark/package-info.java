/**
 * Marks attempts against the frozen key of their case version, and shows the marked attempt. The door is
 * {@link org.manubrium.school.mark.Marks}.
 */
@NullMarked
package org.manubrium.school.mark;

import org.jspecify.annotations.NullMarked;

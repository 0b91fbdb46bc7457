/**
 * Corrections to a frozen key, one line of the mark sheet at a time. The door is
 * {@link org.manubrium.marking.correction.CorrectedKey}; it never changes a key but makes another.
 */
@NullMarked
package org.manubrium.marking.correction;

import org.jspecify.annotations.NullMarked;

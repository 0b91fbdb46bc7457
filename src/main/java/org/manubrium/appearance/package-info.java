/**
 * What can be seen, heard and felt of a sign, and nothing of what it means. {@link org.manubrium.appearance.Appearance}
 * has the same shape for every patient: normal and abnormal differ in their numbers only.
 */
@NullMarked
package org.manubrium.appearance;

import org.jspecify.annotations.NullMarked;

/**
 * What schools teach differently. The door is {@link org.manubrium.marking.convention.Conventions}: it answers which root
 * sets, which scale and which limits hold under a teaching convention.
 */
@NullMarked
package org.manubrium.marking.convention;

import org.jspecify.annotations.NullMarked;

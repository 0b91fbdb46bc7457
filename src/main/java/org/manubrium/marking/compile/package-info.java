/**
 * Makes the frozen key of a case from its body and the tables. The door is
 * {@link org.manubrium.marking.compile.KeyCompiler}. The marker never comes here.
 */
@NullMarked
package org.manubrium.marking.compile;

import org.jspecify.annotations.NullMarked;

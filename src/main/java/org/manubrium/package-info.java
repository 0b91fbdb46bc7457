/** The command line: {@link org.manubrium.Main} is the only place where the parts are wired together. */
@NullMarked
package org.manubrium;

import org.jspecify.annotations.NullMarked;

/** In which order to examine: the exact best plan over the tabled positions and the moves between them. */
@NullMarked
package org.manubrium.reasoning.plan;

import org.jspecify.annotations.NullMarked;

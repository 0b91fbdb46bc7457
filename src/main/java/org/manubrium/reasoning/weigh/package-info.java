/**
 * Makes a {@link org.manubrium.reasoning.Weighing} from the model of the body: bodies for each diagnosis, what each step
 * shows in each, and weights by which they show as often as was published.
 */
@NullMarked
package org.manubrium.reasoning.weigh;

import org.jspecify.annotations.NullMarked;

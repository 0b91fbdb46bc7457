/**
 * What to practise next. Doors: {@link org.manubrium.learning.Forgetting}, how likely it is that something is still known,
 * and {@link org.manubrium.learning.FiveSigns}, which signs come today. Pure; a suggestion, never a mark.
 */
@NullMarked
package org.manubrium.learning;

import org.jspecify.annotations.NullMarked;

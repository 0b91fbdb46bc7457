/** From the chance beforehand to the chance afterwards, by published likelihood ratios, in numbers of people. */
@NullMarked
package org.manubrium.reasoning.odds;

import org.jspecify.annotations.NullMarked;

/**
 * Blood on its way: what reaches a limb through its arteries, what that makes of the warmth and colour of the skin, and what
 * seeps out of the small vessels of a leg. Shares are 0..1 of what health has; pressures in mmHg or, in veins, cm of water.
 */
@NullMarked
package org.manubrium.patient.vessel;

import org.jspecify.annotations.NullMarked;

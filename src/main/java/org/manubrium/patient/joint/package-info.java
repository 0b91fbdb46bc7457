/** Joints: what inflames, fills, wears and stiffens them, and how far they then move. */
@NullMarked
package org.manubrium.patient.joint;

import org.jspecify.annotations.NullMarked;

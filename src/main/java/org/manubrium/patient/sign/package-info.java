/**
 * One class per system, each reading its signs off a body: what is found, how it appears, which strands of pathway carry
 * it. The door is {@link org.manubrium.patient.sign.Signs}.
 */
@NullMarked
package org.manubrium.patient.sign;

import org.jspecify.annotations.NullMarked;

/**
 * The heart as quantities: areas of valves, leaks, pressures, stiffness, delays of conduction. {@link
 * org.manubrium.patient.heart.Heart} works out flows and pressures under a {@link org.manubrium.patient.heart.Load}; jets and
 * thuds follow from them, and a {@link org.manubrium.patient.heart.Stethoscope} hears them. Knows no condition.
 */
@NullMarked
package org.manubrium.patient.heart;

import org.jspecify.annotations.NullMarked;

/**
 * The lungs as a state of each zone under the chest wall (air, what carries sound, airway, pleura, volume) and what
 * follows from it by physics: how a zone rings, carries the voice, sounds and moves. The doors are
 * {@link org.manubrium.patient.lung.LungZone} for one zone and {@link org.manubrium.patient.lung.Lungs} for all of them.
 */
@NullMarked
package org.manubrium.patient.lung;

import org.jspecify.annotations.NullMarked;

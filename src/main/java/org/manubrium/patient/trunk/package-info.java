/** The trunk between the tables and the readers: the belly and its organs, the neck and the back, in centimetres and litres. */
@NullMarked
package org.manubrium.patient.trunk;

import org.jspecify.annotations.NullMarked;

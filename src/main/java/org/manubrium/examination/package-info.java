/**
 * What an examiner can do: manoeuvres, positions, techniques, scales and the readings taken on them. The door is
 * {@link org.manubrium.examination.Examination}. Knows nothing of lesions.
 */
@NullMarked
package org.manubrium.examination;

import org.jspecify.annotations.NullMarked;

package org.manubrium.patient;

import java.util.Optional;

/**
 * A state of a part as a clinician says it, such as "consolidation", and a quantity that it moves.
 *
 * @param quantity its id, with @side and @place to be filled in
 * @param amount by how much a full lesion moves it, in its own unit
 * @param place the place meant when none is said
 */
public record StateName(
        String said, String quantity, double amount, Optional<String> place, String source, String confidence) {}

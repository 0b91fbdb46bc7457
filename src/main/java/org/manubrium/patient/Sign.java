package org.manubrium.patient;

import java.util.Optional;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;

/** A finding on one item, as it would be read; {@code normal} is empty where the sign decides nothing. */
public record Sign(
        Item item, String position, Finding finding, Reading reading, Optional<Boolean> normal, Meaning meaning) {}

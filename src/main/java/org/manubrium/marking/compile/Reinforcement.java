package org.manubrium.marking.compile;

import java.util.List;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Variant;

/** The variant that brings out a reflex which is not seen without it. */
final class Reinforcement {
    static final String VARIANT = "reinforcement";

    private Reinforcement() {}

    /** The ways of reinforcing; the first choice of the variant is to do without. */
    static List<String> choices(Manoeuvre manoeuvre) {
        return manoeuvre.variants().stream()
                .filter(variant -> variant.id().equals(VARIANT))
                .flatMap(variant -> variant.choices().stream().skip(1))
                .map(Variant.Choice::id)
                .toList();
    }
}

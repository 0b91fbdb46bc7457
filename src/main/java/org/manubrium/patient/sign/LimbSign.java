package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * One sign of the limbs that is read as one of a set of words. What is shown follows from that word and the person alone,
 * so that two patients with the same finding look the same.
 *
 * @param drawing which drawing shows it
 * @param usual the word that health shows
 * @param measures what is measured of it
 * @param curves its movements over time
 */
record LimbSign(
        String drawing,
        String usual,
        Read read,
        List<Measured> measures,
        Curves curves,
        Paths paths,
        Quantities quantities) {

    /** The word that is read on one side of a body. */
    interface Read {
        String of(Body body, Side side);
    }

    /** The pathways on which the sign depends. */
    interface Paths {
        List<Strand> of(Body body, Side side);
    }

    /** The quantities on which it depends. */
    interface Quantities {
        Set<String> of(Side side);
    }

    /** The movements of one look; their number, names and lengths are told by the sign alone. */
    interface Curves {
        List<Appearance.Curve> of(LimbNumbers numbers);
    }

    /** An amount, tabled for each word under {@code key}. */
    record Measured(String label, String unit, String key) {}

    LimbSign(String drawing, String usual, Read read, List<Measured> measures, Curves curves, Paths paths) {
        this(drawing, usual, read, measures, curves, paths, side -> Set.of());
    }

    LimbSign with(Quantities moved) {
        return new LimbSign(drawing, usual, read, measures, curves, paths, moved);
    }

    Appearance show(LimbNumbers numbers, String words) {
        return new Appearance(
                drawing,
                curves.of(numbers),
                measures.stream()
                        .map(m -> new Appearance.Measure(m.label(), numbers.of(m.key()), m.unit()))
                        .toList(),
                words);
    }

    static Measured measured(String label, String unit, String key) {
        return new Measured(label, unit, key);
    }

    static Curves none() {
        return numbers -> List.of();
    }
}

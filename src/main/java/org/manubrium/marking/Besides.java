package org.manubrium.marking;

import java.util.List;
import java.util.stream.Stream;
import org.manubrium.marking.MarkSheet.Beside;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.key.CompiledKey;

/** The parts of the profile that an educator lets count: those without weight are not on the sheet. */
final class Besides {
    private Besides() {}

    static List<Beside> of(
            CompiledKey key, Attempt attempt, Weights.Besides weights, Measured measured, List<Handled> handled) {
        return Stream.of(
                        part("thoroughness", measured.thoroughness(), weights.thoroughness()),
                        part("order and handling", handling(measured, handled), weights.handling()),
                        part("information gained", measured.information(), weights.information()),
                        part("confidence", Sureness.score(key, attempt), weights.confidence()))
                .filter(part -> part.weight() > 0)
                .toList();
    }

    private static Beside part(String name, double share, double weight) {
        return new Beside(name, 100 * share, weight);
    }

    /** Economy counts for one half and what was painful for the other, where anything painful was examined. */
    private static double handling(Measured measured, List<Handled> handled) {
        double gentle = handled.stream()
                .mapToDouble(one -> one.well() ? 1 : 0)
                .average()
                .orElse(measured.economy());
        return (measured.economy() + gentle) / 2;
    }
}

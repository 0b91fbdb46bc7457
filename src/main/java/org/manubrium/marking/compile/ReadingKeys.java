package org.manubrium.marking.compile;

import java.util.List;
import java.util.Map;
import org.manubrium.examination.Item;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Scale;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/**
 * Makes the keys to what items read. Which levels are normal is not tabled: they are those that healthy people of this age
 * and sex show, from a fixed number of natural variations.
 */
final class ReadingKeys {
    private final Signs signs;
    private final Look patient;
    private final HealthyPeople healthy;

    ReadingKeys(Signs signs, Look patient, HealthyPeople healthy) {
        this.signs = signs;
        this.patient = patient;
        this.healthy = healthy;
    }

    ReadingKey of(Manoeuvre manoeuvre, Item item) {
        Finding finding = patient.usual(manoeuvre, item);
        if (finding instanceof Finding.Measured measured) {
            return new ReadingKey.Measured(measured.value(), measured.unit(), manoeuvre.tolerance());
        }
        if (finding instanceof Finding.Graded graded) {
            String quantity = signs.examination().scale(manoeuvre.scale()).quantity();
            return new ReadingKey.Graded(signs.examination().scales().stream()
                    .filter(scale -> scale.quantity().equals(quantity))
                    .map(scale -> scale(scale, manoeuvre, item, graded))
                    .toList());
        }
        String code = ((Finding.Seen) finding).code();
        List<String> codes = manoeuvre.scale().isBlank()
                ? List.of(code)
                : codes(signs.examination().scale(manoeuvre.scale()));
        return new ReadingKey.Chosen(
                code,
                codes,
                shown(Finding.Seen.class, manoeuvre, item).stream()
                        .map(Finding.Seen::code)
                        .distinct()
                        .toList());
    }

    /** What healthy people show; a sign that some show in another way is left out for these. */
    private <F extends Finding> List<F> shown(Class<F> kind, Manoeuvre manoeuvre, Item item) {
        return healthy.shown(manoeuvre, item).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<String> codes(Scale scale) {
        return scale.levels().stream().map(Level::code).toList();
    }

    private ReadingKey.ScaleKey scale(Scale scale, Manoeuvre manoeuvre, Item item, Finding.Graded graded) {
        List<Integer> shown = shown(Finding.Graded.class, manoeuvre, item).stream()
                .map(finding -> rank(scale, finding))
                .sorted()
                .toList();
        List<String> codes = codes(scale);
        List<String> normal =
                shown.isEmpty() ? List.of() : codes.subList(shown.get(0), shown.get(shown.size() - 1) + 1);
        return new ReadingKey.ScaleKey(
                scale.id(), scale.name(), scale.ordered(), codes, normal, right(scale, manoeuvre, item, graded));
    }

    /** What only reinforcement brings out is the first level above nothing, by every scale that is tabled. */
    private String right(Scale scale, Manoeuvre manoeuvre, Item item, Finding.Graded graded) {
        int rank = rank(scale, graded);
        boolean broughtOut = rank == 0
                && Reinforcement.choices(manoeuvre).stream()
                        .anyMatch(choice -> rank(
                                        scale,
                                        patient.with(
                                                item,
                                                manoeuvre.positions().get(0),
                                                Map.of(Reinforcement.VARIANT, choice)))
                                > 0);
        return codes(scale).get(broughtOut ? 1 : rank);
    }

    private static int rank(Scale scale, Finding finding) {
        return scale.rank(scale.grade(((Finding.Graded) finding).amount()).code());
    }
}

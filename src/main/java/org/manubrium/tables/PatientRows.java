package org.manubrium.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.UnknownSite;
import org.manubrium.patient.Build;
import org.manubrium.patient.BuildShift;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Constant;
import org.manubrium.patient.Course;
import org.manubrium.patient.MeaningTerm;
import org.manubrium.patient.Physiology;
import org.manubrium.patient.Quantity;
import org.manubrium.patient.QuantityPart;
import org.manubrium.patient.Saying;
import org.manubrium.patient.StateName;

/** Reads the tables of the patient model. */
final class PatientRows {
    private final TableFiles files;

    PatientRows(TableFiles files) {
        this.files = files;
    }

    Physiology physiology() {
        return new Physiology(
                files.rows(
                        "quantities",
                        r -> new Quantity(
                                r.word("id"),
                                r.word("name"),
                                r.text("unit"),
                                r.number("normal"),
                                r.number("spread"),
                                r.number("least"),
                                r.number("most"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "quantity_parts",
                        r -> new QuantityPart(
                                r.word("whole"),
                                r.word("part"),
                                r.number("share"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "constants",
                        r -> new Constant(
                                r.word("name"),
                                r.number("amount"),
                                r.text("unit"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "courses",
                        r -> new Course(
                                r.word("division"),
                                r.number("days"),
                                r.number("shock"),
                                r.number("release"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "sayings",
                        r -> new Saying(
                                r.word("about"),
                                r.number("at_least"),
                                r.word("words"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "builds",
                        r -> new BuildShift(
                                r.one("build", Build.class),
                                r.word("quantity"),
                                r.number("shift"),
                                r.word("source"),
                                r.word("confidence"))));
    }

    List<StateName> states() {
        return files.rows(
                "state_names",
                r -> new StateName(
                        r.word("said"),
                        r.word("quantity"),
                        r.number("amount"),
                        r.maybe("place"),
                        r.word("source"),
                        r.word("confidence")));
    }

    List<MeaningTerm> meaningTerms() {
        return files.rows(
                "meaning_terms",
                r -> new MeaningTerm(
                        r.word("id"),
                        r.word("name"),
                        r.text("strand"),
                        r.text("divisions"),
                        r.text("direction"),
                        r.word("source"),
                        r.word("confidence")));
    }

    private record EffectRow(String condition, Condition.Effect effect) {}

    List<Condition> conditions(Anatomy anatomy, Physiology physiology) {
        List<EffectRow> effects = files.rows("condition_effects", PatientRows::effect);
        Map<String, Double> least = new HashMap<>();
        files.rows("severity_ranges", r -> least.put(r.word("condition"), r.number("least")) == null);
        List<Condition> found = files.rows(
                "conditions",
                r -> checked(r, anatomy, physiology, condition(r, effects, least.getOrDefault(r.word("id"), 0.0))));
        least.keySet().stream()
                .filter(id -> found.stream().noneMatch(c -> c.id().equals(id)))
                .forEach(id -> {
                    throw new IllegalArgumentException("severity_ranges: no condition is called \"" + id + "\"");
                });
        return found;
    }

    private static EffectRow effect(Row r) {
        if (r.text("site").isEmpty() == r.text("quantity").isEmpty()) {
            throw r.bad("expected either a site or a quantity");
        }
        return new EffectRow(
                r.word("condition"),
                new Condition.Effect(
                        r.text("site"),
                        r.text("quantity"),
                        r.number("amount"),
                        r.word("source"),
                        r.word("confidence")));
    }

    private static Condition condition(Row r, List<EffectRow> effects, double least) {
        String id = r.word("id");
        return new Condition(
                id,
                r.word("name"),
                r.yes("sided"),
                r.list("levels"),
                r.word("onset"),
                r.yes("old"),
                r.number("prior"),
                r.word("history"),
                least,
                effects.stream()
                        .filter(e -> e.condition().equals(id))
                        .map(EffectRow::effect)
                        .toList(),
                r.word("source"),
                r.word("confidence"));
    }

    /** Tries every site and quantity of a condition with its first level, so that a slip shows when the tables load. */
    private static Condition checked(Row r, Anatomy anatomy, Physiology physiology, Condition condition) {
        Onset onset =
                Onset.parse(condition.onset()).orElseThrow(() -> r.bad("onset cannot be read: " + condition.onset()));
        Optional<String> level = condition.levels().stream().findFirst();
        for (Condition.Effect effect : condition.effects()) {
            try {
                if (effect.site().isEmpty()) {
                    physiology.parts(Conditions.quantity(effect.quantity(), Side.RIGHT, level));
                } else {
                    anatomy.lesions(Conditions.site(effect.site(), Side.RIGHT, level), 1, onset);
                }
            } catch (UnknownSite | IllegalArgumentException e) {
                throw r.bad(String.valueOf(e.getMessage()));
            }
        }
        return condition;
    }
}

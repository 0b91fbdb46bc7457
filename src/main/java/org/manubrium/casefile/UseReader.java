package org.manubrium.casefile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.UnknownSite;
import org.manubrium.patient.Condition;
import org.manubrium.tables.Reference;

/** Reads what ails the patient: conditions and lesions. */
final class UseReader {
    static final List<String> CONDITION_KEYS = List.of("is", "level", "side", "severity", "onset");
    static final List<String> LESION_KEYS = List.of("site", "loss", "onset", "old");

    /** What a lesion's onset is taken for when none is given: long enough for release to show. */
    private static final Onset WEEKS = new Onset(42, "weeks");

    private final Reference reference;
    private final Problems problems;

    UseReader(Reference reference, Problems problems) {
        this.reference = reference;
        this.problems = problems;
    }

    Optional<ConditionUse> condition(Mapping entry) {
        int before = problems.count();
        Optional<Condition> named =
                entry.needed("is", "a condition's id or name").flatMap(this::named);
        double severity =
                entry.number("severity", named.map(Condition::leastSeverity).orElse(0.0), 1, 1);
        Optional<Onset> onset = onset(entry);
        if (named.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> level = level(entry, named.get());
        Side side = side(entry, named.get());
        return problems.count() > before
                ? Optional.empty()
                : Optional.of(new ConditionUse(named.get().id(), side, level, severity, onset));
    }

    /** A condition by id or name, in capitals or not. */
    Optional<Condition> named(Text text) {
        String wanted = text.words().trim().toLowerCase(Locale.ROOT);
        Optional<Condition> found = reference.conditions().all().stream()
                .filter(c -> c.id().equals(wanted)
                        || c.name().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
        if (found.isEmpty()) {
            List<String> ids =
                    reference.conditions().all().stream().map(Condition::id).toList();
            problems.add(
                    text.line(),
                    "unknown-condition",
                    "no condition is called \"" + text.words() + "\"" + Nearest.hint(wanted, ids)
                            + " (the command \"conditions\" lists them)");
        }
        return found;
    }

    private Optional<String> level(Mapping entry, Condition condition) {
        Optional<Text> text = entry.text("level");
        String expected = condition.levels().isEmpty() ? "none" : "one of " + String.join(", ", condition.levels());
        if (text.isEmpty()) {
            if (!condition.levels().isEmpty()) {
                problems.add(entry.line(), "level", condition.id() + " is said with a level: expected " + expected);
            }
            return Optional.empty();
        }
        Optional<String> level = condition.levels().stream()
                .filter(l -> l.equalsIgnoreCase(text.get().words().trim()))
                .findFirst();
        if (level.isEmpty()) {
            problems.add(
                    text.get().line(),
                    "level",
                    condition.id() + " has no level \"" + text.get().words() + "\": expected " + expected);
        }
        return level;
    }

    private Side side(Mapping entry, Condition condition) {
        Optional<Text> text = entry.text("side");
        Optional<Side> side = text.flatMap(t -> Side.of(t.words().trim().toLowerCase(Locale.ROOT)));
        int line = entry.lineOf("side");
        if (condition.sided() && side.filter(s -> s != Side.NONE).isEmpty()) {
            problems.add(
                    line,
                    "side",
                    condition.id() + " is said with a side: expected right or left"
                            + text.map(t -> ", found \"" + t.words() + "\"").orElse(""));
        }
        if (!condition.sided() && text.isPresent() && !side.equals(Optional.of(Side.NONE))) {
            problems.add(
                    line,
                    "side",
                    condition.id() + " takes no side: expected none, found \""
                            + text.get().words() + "\"");
        }
        return side.orElse(Side.NONE);
    }

    private Optional<Onset> onset(Mapping entry) {
        Optional<Text> text = entry.text("onset");
        Optional<Onset> onset = text.flatMap(t -> Onset.parse(t.words()));
        if (text.isPresent() && onset.isEmpty()) {
            problems.add(
                    text.get().line(),
                    "onset",
                    "onset: expected for example \"6 weeks\", \"3 hours\", \"hours\", \"weeks\" or \"old\", found \""
                            + text.get().words() + "\"");
        }
        return onset;
    }

    Optional<LesionUse> lesion(Mapping entry) {
        int before = problems.count();
        Optional<Text> site = entry.needed("site", "for example \"root C7 left\"");
        double loss = entry.number("loss", 0, 1, 1);
        Onset onset = onset(entry).orElse(WEEKS);
        boolean old = old(entry, onset);
        site.ifPresent(this::check);
        return site.isEmpty() || problems.count() > before
                ? Optional.empty()
                : Optional.of(new LesionUse(site.get().words().trim(), loss, onset, old));
    }

    private boolean old(Mapping entry, Onset onset) {
        Optional<Text> text = entry.text("old");
        if (text.isPresent() && !List.of("yes", "no").contains(text.get().words())) {
            problems.add(
                    text.get().line(),
                    "wrong-type",
                    "lesions.old: expected yes or no, found \"" + text.get().words() + "\"");
        }
        return text.map(t -> t.words().equals("yes")).orElse(onset.words().equals("old"));
    }

    private void check(Text site) {
        try {
            reference.conditions().lesion(site.words(), 1, WEEKS, false);
        } catch (UnknownSite e) {
            problems.add(site.line(), "unknown-site", String.valueOf(e.getMessage()));
        }
    }
}

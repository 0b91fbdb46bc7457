package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Condition;
import org.manubrium.tables.NextStep;
import org.manubrium.tables.Reference;

/** Reads what the author says of the key: the conclusion, and changes to what is essential. */
final class KeyReader {
    static final List<String> CONCLUSION_KEYS = List.of("diagnosis", "next");
    static final List<String> CHANGE_KEYS = List.of("manoeuvre", "place", "because");

    private final Reference reference;
    private final UseReader uses;
    private final ManoeuvreReader manoeuvres;
    private final Problems problems;

    KeyReader(Reference reference, UseReader uses, Problems problems) {
        this.reference = reference;
        this.uses = uses;
        this.manoeuvres = new ManoeuvreReader(reference, problems);
        this.problems = problems;
    }

    Conclusion conclusion(Mapping file) {
        Optional<Mapping> entry = file.mapping("conclusion", CONCLUSION_KEYS);
        List<String> diagnosis = entry.map(e -> e.texts("diagnosis")).orElse(List.of()).stream()
                .flatMap(text -> uses.named(text).stream())
                .map(Condition::id)
                .toList();
        List<String> next = entry.map(e -> e.texts("next")).orElse(List.of()).stream()
                .flatMap(text -> step(text).stream())
                .toList();
        return new Conclusion(diagnosis, next);
    }

    private Optional<String> step(Text text) {
        List<String> ids = reference.nextSteps().stream().map(NextStep::id).toList();
        if (!ids.contains(text.words())) {
            problems.add(
                    text.line(),
                    "unknown-next-step",
                    "no next step is called \"" + text.words() + "\"" + Nearest.hint(text.words(), ids)
                            + " (expected one of " + String.join(", ", ids) + ")");
            return Optional.empty();
        }
        return Optional.of(text.words());
    }

    /** The cautions of what must not be done to this patient. */
    List<String> unsafe(Mapping file) {
        return file.texts("unsafe").stream()
                .flatMap(text -> caution(text).stream())
                .toList();
    }

    private Optional<String> caution(Text text) {
        if (reference.examination().caution(text.words()).isEmpty()) {
            problems.add(
                    text.line(),
                    "unknown-caution",
                    "unsafe: no caution is called \"" + text.words() + "\" (neck-movement, say)");
            return Optional.empty();
        }
        return Optional.of(text.words());
    }

    /** Whether the student is asked beforehand what to expect. */
    boolean expect(Mapping file) {
        Optional<Text> text = file.text("expect");
        text.filter(said -> !said.words().equals("yes") && !said.words().equals("no"))
                .ifPresent(said -> problems.add(
                        said.line(), "wrong-type", "expect: expected yes or no, found \"" + said.words() + "\""));
        return text.filter(said -> said.words().equals("yes")).isPresent();
    }

    List<KeyChange> changes(Mapping file, String key) {
        List<KeyChange> found = new ArrayList<>();
        file.mappings(key, CHANGE_KEYS).forEach(entry -> change(entry).ifPresent(found::add));
        return found;
    }

    private Optional<KeyChange> change(Mapping entry) {
        int before = problems.count();
        Optional<Manoeuvre> manoeuvre = manoeuvres.manoeuvre(entry);
        Optional<Text> because = entry.needed("because", "the reason, which the student is told");
        Optional<String> place = manoeuvre.flatMap(m -> manoeuvres.place(entry, m));
        return problems.count() > before
                ? Optional.empty()
                : manoeuvre.map(m ->
                        new KeyChange(m.id(), place, because.map(Text::words).orElse("")));
    }
}

package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Question;
import org.manubrium.patient.Quantity;
import org.manubrium.tables.Reference;

/** Reads what is told before and while examining, and the amounts at which quantities stand. */
final class ToldReader {
    private static final int MOST = 12;

    static final List<String> OBSERVATION_KEYS = List.of("label", "text");

    private final Reference reference;
    private final Problems problems;

    ToldReader(Reference reference, Problems problems) {
        this.reference = reference;
        this.problems = problems;
    }

    Map<String, String> history(Mapping file) {
        List<String> ids =
                reference.examination().questions().stream().map(Question::id).toList();
        Map<String, String> found = new LinkedHashMap<>();
        file.pairs("history").forEach((question, answer) -> {
            if (!ids.contains(question.words())) {
                problems.add(
                        question.line(),
                        "unknown-question",
                        "history: no question is called \"" + question.words() + "\""
                                + Nearest.hint(question.words(), ids) + " (expected one of " + String.join(", ", ids)
                                + ")");
            }
            found.put(question.words(), answer.words());
        });
        return found;
    }

    List<Observation> observations(Mapping file) {
        List<Observation> found = new ArrayList<>();
        for (Mapping entry : file.mappings("observations", OBSERVATION_KEYS)) {
            Optional<Text> label = entry.needed("label", "what was observed");
            Optional<Text> text = entry.needed("text", "what was found");
            label.ifPresent(this::refuseFindings);
            label.flatMap(l -> text.map(t -> new Observation(l.words(), t.words())))
                    .ifPresent(found::add);
        }
        return found;
    }

    /**
     * What a manoeuvre finds follows from the body; to give it beforehand could contradict it. A name of one word, such as
     * temperature, is let pass: before an examination it means something else.
     */
    private void refuseFindings(Text label) {
        Optional<Manoeuvre> found = reference.examination().manoeuvres().stream()
                .filter(m -> m.name().contains(" "))
                .filter(m -> m.name().equalsIgnoreCase(label.words().trim())
                        || m.id().equals(label.words().trim()))
                .findFirst();
        found.ifPresent(m -> problems.add(
                label.line(),
                "observation",
                "\"" + label.words() + "\" is found by examining (" + m.id()
                        + "): expected only what is given beforehand"));
    }

    Map<String, Double> quantities(Mapping file) {
        Map<String, Double> found = new LinkedHashMap<>();
        file.pairs("quantities").forEach((id, text) -> {
            if (reference.physiology().stands(id.words())) {
                reference
                        .physiology()
                        .parts(id.words())
                        .forEach((part, share) -> amount(reference.physiology().quantity(part), text)
                                .ifPresent(a -> found.put(part, a * share)));
            } else {
                unknown(id);
            }
        });
        return found;
    }

    private void unknown(Text id) {
        List<String> ids = reference.physiology().quantities().stream()
                .map(Quantity::id)
                .sorted()
                .toList();
        problems.add(
                id.line(),
                "unknown-quantity",
                "no quantity is called \"" + id.words() + "\"" + Nearest.hint(id.words(), ids)
                        + " (expected for example " + String.join(", ", like(id.words(), ids)) + ")");
    }

    /** Those that begin with the same word; any if none does. */
    private static List<String> like(String id, List<String> ids) {
        String family = id.split("[.-]", -1)[0];
        List<String> same =
                ids.stream().filter(known -> known.startsWith(family)).toList();
        return (same.isEmpty() ? ids : same).stream().limit(MOST).toList();
    }

    private Optional<Double> amount(Quantity quantity, Text text) {
        double amount = Mapping.parsed(text.words());
        if (amount >= quantity.least() && amount <= quantity.most()) {
            return Optional.of(amount);
        }
        problems.add(
                text.line(),
                Double.isNaN(amount) ? "wrong-type" : "out-of-range",
                "quantities." + quantity.id() + ": expected a number from " + Mapping.plain(quantity.least()) + " to "
                        + Mapping.plain(quantity.most()) + " (" + quantity.unit() + "), found \"" + text.words()
                        + "\"");
        return Optional.empty();
    }
}

package org.manubrium.school.mark;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.manubrium.exchange.SheetReader;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.store.Attempt;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;

/** What went wrong in a marked attempt and can be practised in short questions, the worst first. */
public final class ToDrill {
    private static final double WELL_ENOUGH = 0.75;

    private final KeysInForce keys;

    public ToDrill(KeysInForce keys) {
        this.keys = keys;
    }

    /**
     * Something to practise.
     *
     * @param fact as the questions name it, "kind:what"; it may say what was right
     * @param because what was asked where it went wrong
     */
    public record Wish(String fact, String because) {}

    /** Empty if the attempt has no mark yet. */
    public List<Wish> of(Stores stores, Attempt attempt) {
        Optional<StoredMark> mark = stores.marks().current(attempt.id());
        return mark.map(m -> of(
                        keys.of(stores, attempt.caseVersionId()),
                        SheetReader.read(m.sheet()).lines()))
                .orElse(List.of());
    }

    private static List<Wish> of(CompiledKey key, List<Line> lines) {
        return lines.stream()
                .filter(line -> line.credit() < WELL_ENOUGH && line.scored())
                .sorted(Comparator.comparingDouble(Line::credit))
                .flatMap(line -> fact(key, line).map(fact -> new Wish(fact, line.asked())).stream())
                .collect(java.util.stream.Collectors.toMap(
                        Wish::fact, wish -> wish, (first, later) -> first, java.util.LinkedHashMap::new))
                .values()
                .stream()
                .toList();
    }

    private static Optional<String> fact(CompiledKey key, Line line) {
        String about = line.id().substring(line.id().indexOf('/') + 1);
        String manoeuvre = about.replaceAll("[:@].*", "");
        return switch (line.id().substring(0, line.id().indexOf('/'))) {
            case "roots" -> Optional.of("roots:" + manoeuvre);
            case "reading", "normal" -> Optional.of("read:" + manoeuvre);
            case "conclusion" -> truth(key).map(truth -> kind(about) + ":" + truth);
            default -> Optional.empty();
        };
    }

    private static String kind(String conclusion) {
        return switch (conclusion) {
            case "site" -> "where";
            case "next" -> "next";
            default -> "tell";
        };
    }

    private static Optional<String> truth(CompiledKey key) {
        return key.conclusion().truths().stream().map(truth -> truth.id()).findFirst();
    }
}

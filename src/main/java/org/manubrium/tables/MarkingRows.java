package org.manubrium.tables;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.marking.Weights;
import org.manubrium.marking.compile.RelatedTerm;
import org.manubrium.marking.convention.ConventionFact;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.convention.PublishedRoots;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.marking.key.Origin;

/** Reads the tables of marking. */
final class MarkingRows {
    private final TableFiles files;

    MarkingRows(TableFiles files) {
        this.files = files;
    }

    MarkingTables read() {
        return new MarkingTables(
                new Conventions(
                        files.rows("conventions", MarkingRows::fact),
                        files.rows("published_roots", MarkingRows::published)),
                files.rows("related_terms", MarkingRows::related),
                files.rows("harm_rules", MarkingRows::harm),
                weights(),
                hurting());
    }

    private static ConventionFact fact(Row r) {
        if (r.text("form").isEmpty()
                && r.text("scale").isEmpty()
                && r.text("threshold").isEmpty()) {
            throw r.bad("expected a form, a scale or a threshold");
        }
        if (r.word("fact").endsWith(" roots")) {
            r.list("form").forEach(set -> roots(r, "form", set));
        }
        return new ConventionFact(
                r.word("convention"),
                r.word("fact"),
                r.text("form"),
                r.text("scale"),
                r.text("threshold").isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(r.number("threshold")),
                r.text("unit"),
                r.word("source"),
                r.word("confidence"),
                r.text("note"));
    }

    private static SegmentSet roots(Row r, String column, String text) {
        return SegmentSet.parse(text)
                .orElseThrow(() -> r.bad(column + ": expected root levels as C6-C7, found \"" + text + "\""));
    }

    private static PublishedRoots published(Row r) {
        return new PublishedRoots(
                r.word("fact"), roots(r, "set", r.word("set")), r.word("source"), r.word("confidence"), r.text("note"));
    }

    private static RelatedTerm related(Row r) {
        return new RelatedTerm(
                r.word("term"), r.word("related"), r.word("source"), r.word("confidence"), r.text("note"));
    }

    private static HarmRule harm(Row r) {
        return new HarmRule(
                r.word("id"),
                r.word("before"),
                r.text("caution"),
                List.of(),
                r.list("positions"),
                r.list("choices"),
                r.text("question"),
                r.word("text"),
                new Origin(r.word("source"), r.word("confidence")));
    }

    private record HurtRow(String about, double atLeast) {}

    private record SayingRow(String about, double atLeast, String words) {}

    /** The words of every saying from the amount on at which it is said that it hurts. */
    private Set<String> hurting() {
        List<HurtRow> hurts = files.rows("hurts", r -> new HurtRow(r.word("about"), r.number("at_least")));
        return files
                .rows("sayings", r -> new SayingRow(r.word("about"), r.number("at_least"), r.word("words")))
                .stream()
                .filter(said -> hurts.stream()
                        .anyMatch(hurt -> hurt.about().equals(said.about()) && said.atLeast() >= hurt.atLeast()))
                .map(SayingRow::words)
                .collect(Collectors.toUnmodifiableSet());
    }

    private record WeightRow(String domain, double weight) {}

    private Weights weights() {
        Map<String, Double> found =
                files.rows("weights", r -> new WeightRow(r.word("domain"), r.number("weight"))).stream()
                        .collect(Collectors.toMap(WeightRow::domain, WeightRow::weight));
        return new Weights(
                weight(found, "essential"),
                weight(found, "reading"),
                weight(found, "interpretation"),
                weight(found, "conclusion"));
    }

    private static double weight(Map<String, Double> found, String domain) {
        Double weight = found.get(domain);
        if (weight == null) {
            throw new IllegalArgumentException("the table of weights has no row for the domain " + domain);
        }
        return weight;
    }
}

package org.manubrium.marking.convention;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.manubrium.anatomy.SegmentSet;

/** The teaching conventions. Immutable. */
public final class Conventions {
    private static final String ROOTS = " roots";
    private static final String SCALE = " scale";

    private final Map<String, Map<String, ConventionFact>> facts = new LinkedHashMap<>();
    private final List<PublishedRoots> published;
    private final Map<String, List<PublishedRoots>> inPrint;

    /**
     * The sets of roots that a convention accepts, each an alternative, and where that comes from.
     *
     * @param row the {@link ConventionFact}, or the {@link PublishedRoots} where the convention says nothing of its own
     */
    public record Roots(List<SegmentSet> accepted, String source, String confidence, Record row) {}

    public Conventions(List<ConventionFact> rows, List<PublishedRoots> published) {
        this.published = List.copyOf(published);
        this.inPrint = published.stream().collect(Collectors.groupingBy(PublishedRoots::fact));
        for (ConventionFact row : rows) {
            Map<String, ConventionFact> own = facts.computeIfAbsent(row.convention(), c -> new LinkedHashMap<>());
            if (own.put(row.fact(), row) != null) {
                throw new IllegalArgumentException(row.convention() + " has two rows for \"" + row.fact() + "\"");
            }
            if (row.fact().endsWith(ROOTS)) {
                sets(row);
            }
        }
    }

    /** The ids of the conventions, in table order. */
    public List<String> ids() {
        return List.copyOf(facts.keySet());
    }

    /** The name on pages. */
    public String name(String convention) {
        return convention.substring(0, 1).toUpperCase(Locale.ROOT) + convention.substring(1);
    }

    /** What a convention teaches of a fact, if it has a form of its own. */
    public Optional<ConventionFact> fact(String convention, String fact) {
        return Optional.ofNullable(facts.getOrDefault(convention, Map.of()).get(fact));
    }

    /** Everything a convention teaches in its own form, in table order. */
    public List<ConventionFact> facts(String convention) {
        return List.copyOf(facts.getOrDefault(convention, Map.of()).values());
    }

    /** The scale on which a quantity is read, if the convention names one. */
    public Optional<String> scale(String convention, String quantity) {
        return fact(convention, quantity + SCALE).map(ConventionFact::scale);
    }

    /** The roots a convention teaches for a reflex, a movement or a point of the skin; empty if none are tabled. */
    public Optional<Roots> roots(String convention, String owner) {
        return fact(convention, owner + ROOTS)
                .map(row -> new Roots(sets(row), row.source(), row.confidence(), row))
                .or(() -> published(owner).stream()
                        .findFirst()
                        .map(p -> new Roots(List.of(p.roots()), p.source(), p.confidence(), p)));
    }

    /** Every set in print, in table order. */
    public List<PublishedRoots> published() {
        return published;
    }

    /** Every set in print for it. */
    public List<PublishedRoots> published(String owner) {
        return inPrint.getOrDefault(owner + ROOTS, List.of());
    }

    private static List<SegmentSet> sets(ConventionFact row) {
        return Arrays.stream(row.form().split("\\|", -1))
                .map(text -> SegmentSet.parse(text)
                        .orElseThrow(() -> new IllegalArgumentException("form: expected root levels as C6-C7 for \""
                                + row.fact() + "\" of " + row.convention() + ", found \"" + text + "\"")))
                .toList();
    }
}

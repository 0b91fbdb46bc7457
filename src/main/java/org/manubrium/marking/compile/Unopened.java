package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Scale;
import org.manubrium.marking.convention.ConventionFact;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.convention.PublishedRoots;
import org.manubrium.marking.key.Origin;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.MeaningTerm;

/**
 * The rows of the tables that a line of the mark sheet can stand on and whose text nobody here has opened. A row is one
 * fact: a manoeuvre, a scale with its levels, a condition with what it takes, a term, what a convention teaches, a set of
 * roots in print.
 */
public final class Unopened {
    private static final String MEMORY = "from-memory";

    private final Examination examination;
    private final Conditions conditions;
    private final List<MeaningTerm> terms;
    private final Conventions conventions;
    private final Map<String, Origin> scales = new LinkedHashMap<>();

    /** One such row: what kind it is of, what it is about and what it says, in words. */
    public record Fact(Origin origin, String kind, String name, String says) {}

    public Unopened(Examination examination, Conditions conditions, List<MeaningTerm> terms, Conventions conventions) {
        this.examination = examination;
        this.conditions = conditions;
        this.terms = List.copyOf(terms);
        this.conventions = conventions;
        examination.scales().forEach(scale -> scales.put(scale.id(), of(scale)));
    }

    static Origin of(Manoeuvre row) {
        return Origin.of("manoeuvres", row.id(), row, row.source(), row.confidence());
    }

    static Origin of(MeaningTerm row) {
        return Origin.of("meaning_terms", row.id(), row, row.source(), row.confidence());
    }

    static Origin of(ConventionFact row) {
        return Origin.of("conventions", row.convention() + ": " + row.fact(), row, row.source(), row.confidence());
    }

    static Origin of(PublishedRoots row) {
        return Origin.of("published_roots", row.fact() + " " + row.roots(), row, row.source(), row.confidence());
    }

    static Origin of(Conventions.Roots roots) {
        return roots.row() instanceof ConventionFact own ? of(own) : of((PublishedRoots) roots.row());
    }

    static Origin of(Scale row) {
        Stream<String> levels = row.levels().stream().map(Level::confidence);
        return Origin.of("scales", row.id(), row, row.source(), worst(row.confidence(), levels));
    }

    static Origin of(Condition row) {
        Stream<String> effects = row.effects().stream().map(Condition.Effect::confidence);
        return Origin.of("conditions", row.id(), row, row.source(), worst(row.confidence(), effects));
    }

    private static String worst(String own, Stream<String> parts) {
        return parts.anyMatch(MEMORY::equals) ? MEMORY : own;
    }

    /** The row of the condition that explains a finding, in words as a case says it. */
    Optional<Origin> explaining(String said) {
        return condition(said).map(Unopened::of).filter(Origin::unverified);
    }

    /** "Root compression, C7, left" is of the condition whose name it begins with; the longest name is meant. */
    private Optional<Condition> condition(String said) {
        return conditions.all().stream()
                .filter(row -> said.equals(row.name()) || said.startsWith(row.name() + ", "))
                .max(Comparator.comparingInt(row -> row.name().length()));
    }

    /** The scales on which a manoeuvre may be read. */
    List<Origin> scales(Collection<String> ids) {
        return scales.entrySet().stream()
                .filter(scale -> ids.contains(scale.getKey()))
                .map(Map.Entry::getValue)
                .filter(Origin::unverified)
                .toList();
    }

    /** Every such row, in words. */
    public List<Fact> facts() {
        List<Fact> found = new ArrayList<>();
        examination.manoeuvres().forEach(row -> found.add(new Fact(of(row), "manoeuvre", row.name(), row.technique())));
        examination.scales().forEach(row -> found.add(new Fact(of(row), "scale", row.name(), levels(row))));
        conditions.all().forEach(row -> found.add(new Fact(of(row), "condition", row.name(), takes(row))));
        terms.forEach(row -> found.add(new Fact(of(row), "meaning", row.name(), earned(row))));
        conventions
                .ids()
                .forEach(id -> conventions
                        .facts(id)
                        .forEach(row -> found.add(new Fact(
                                of(row), "convention", conventions.name(id) + ": " + row.fact(), taught(row)))));
        conventions
                .published()
                .forEach(row -> found.add(new Fact(
                        of(row), "roots in print", row.fact(), row.roots().toString())));
        return found.stream().filter(fact -> fact.origin().unverified()).toList();
    }

    private static String levels(Scale row) {
        return row.levels().stream()
                .map(level -> level.code() + " " + level.label())
                .collect(Collectors.joining("; "));
    }

    private String takes(Condition row) {
        return row.effects().stream()
                .map(effect -> (effect.site().isEmpty() ? conditions.inWords(effect.quantity()) : effect.site())
                        + " by " + effect.amount())
                .collect(Collectors.joining("; "));
    }

    private String earned(MeaningTerm row) {
        String way = row.direction().isEmpty() ? "" : ", " + row.direction();
        return "said of a sign that is explained by: " + conditions.inWords(row.strand())
                + (row.divisions().isEmpty() ? "" : " (" + row.divisions().replace("|", ", ") + ")") + way;
    }

    private static String taught(ConventionFact row) {
        String limit = row.threshold().isPresent() ? row.threshold().getAsDouble() + " " + row.unit() : "";
        return Stream.of(row.form(), row.scale(), limit, row.note())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("; "));
    }
}

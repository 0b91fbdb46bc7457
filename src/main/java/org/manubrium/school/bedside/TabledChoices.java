package org.manubrium.school.bedside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Structure;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Scale;
import org.manubrium.patient.MeaningTerm;
import org.manubrium.patient.sign.Meanings;
import org.manubrium.tables.Reference;

/** The choices from the tables, with the scales of one teaching convention. */
public final class TabledChoices {
    private final Reference reference;
    private final BiFunction<String, String, Optional<String>> scaleOf;
    private final Map<String, List<Term>> terms;
    private final Map<String, Choices> made = new ConcurrentHashMap<>();

    /** @param scaleOf the scale that a convention reads a quantity on, if it names one */
    public TabledChoices(Reference reference, BiFunction<String, String, Optional<String>> scaleOf) {
        this.reference = reference;
        this.scaleOf = scaleOf;
        this.terms = Map.of(
                "means", means(reference),
                "sites", sites(reference),
                "diagnoses", diagnoses(reference),
                "next",
                        reference.nextSteps().stream()
                                .map(n -> new Term(n.id(), n.name()))
                                .toList());
    }

    /** What can be done and answered under a convention. */
    public Choices under(String convention) {
        return made.computeIfAbsent(convention, this::make);
    }

    private Choices make(String convention) {
        Examination examination = reference.examination();
        Map<String, Scale> scales = new HashMap<>();
        for (Manoeuvre manoeuvre : examination.manoeuvres()) {
            if (!manoeuvre.scale().isEmpty()) {
                Scale own = examination.scale(manoeuvre.scale());
                Optional<String> inForce = scaleOf.apply(convention, own.quantity());
                scales.put(manoeuvre.id(), inForce.map(examination::scale).orElse(own));
            }
        }
        return new Choices(examination, Map.copyOf(scales), terms);
    }

    private static List<Term> means(Reference reference) {
        return reference.signs().meanings().terms().stream()
                .map(TabledChoices::term)
                .distinct()
                .toList();
    }

    private static Term term(MeaningTerm term) {
        return new Term(term.id(), term.name());
    }

    private static List<Term> diagnoses(Reference reference) {
        List<Term> found = new ArrayList<>();
        found.add(new Term(Meanings.NORMAL, "nothing abnormal"));
        reference.conditions().all().forEach(c -> found.add(new Term(c.id(), c.name())));
        return List.copyOf(found);
    }

    /** Every place a lesion can be said to lie, as it is said. */
    private static List<Term> sites(Reference reference) {
        List<Term> found = new ArrayList<>();
        found.add(new Term(Meanings.NORMAL, "nowhere: nothing abnormal"));
        for (Structure structure : reference.anatomy().tables().structures()) {
            for (String said : said(structure)) {
                found.add(new Term(said, said));
            }
        }
        return List.copyOf(found);
    }

    private static List<String> said(Structure structure) {
        List<String> stems = structure.segments()
                ? Segment.all().stream().map(s -> structure.name() + " " + s).toList()
                : List.of(structure.name());
        List<String> sided = structure.sided()
                ? stems.stream()
                        .flatMap(s -> List.of(s + " right", s + " left").stream())
                        .toList()
                : stems;
        return structure.levels().isEmpty()
                ? sided
                : sided.stream()
                        .flatMap(s -> structure.levels().stream().map(l -> s + " at " + l))
                        .toList();
    }
}

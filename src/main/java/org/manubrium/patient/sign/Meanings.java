package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Site;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Meaning;
import org.manubrium.patient.MeaningTerm;
import org.manubrium.patient.Quantity;

/**
 * Explains a finding by taking ailments away: what changes it when removed is what explains it. The term then follows from
 * the strand of pathway that is hurt and the part of the nervous system in which the lesion lies.
 */
public final class Meanings {
    /** The term for a finding that is what this person would show in health. */
    public static final String NORMAL = "nothing-abnormal";

    /** The term for a finding that only old leftovers explain. */
    public static final String OLD = "old-nothing-new";

    private static final double HURT = 0.05;

    private final List<MeaningTerm> terms;
    private final Examination examination;

    public Meanings(List<MeaningTerm> terms, Examination examination) {
        this.terms = List.copyOf(terms);
        this.examination = examination;
    }

    public List<MeaningTerm> terms() {
        return terms;
    }

    Meaning explain(Body body, Manoeuvre manoeuvre, Probe probe, SignReader reader, Finding finding, boolean normal) {
        if (normal) {
            return meaning(NORMAL, List.of(), List.of());
        }
        List<Ailment> guilty = body.ailments().stream()
                .filter(ailment -> changes(reader.find(body.without(ailment), manoeuvre, probe), finding, manoeuvre))
                .toList();
        List<Ailment> blamed = guilty.isEmpty() ? touching(body, manoeuvre, probe, reader) : guilty;
        List<String> names = blamed.stream().map(Ailment::name).toList();
        Hurt hurt = hurt(body, manoeuvre, probe, reader, blamed);
        if (!blamed.isEmpty() && blamed.stream().allMatch(Ailment::old)) {
            return meaning(OLD, names, hurt.sites);
        }
        return meaning(term(hurt, direction(body, manoeuvre, probe, reader, finding)), names, hurt.sites);
    }

    private boolean changes(Finding without, Finding with, Manoeuvre manoeuvre) {
        if (with instanceof Finding.Graded a && without instanceof Finding.Graded b) {
            return !examination
                    .scale(manoeuvre.scale())
                    .grade(a.amount())
                    .equals(examination.scale(manoeuvre.scale()).grade(b.amount()));
        }
        if (with instanceof Finding.Measured a && without instanceof Finding.Measured b) {
            return Math.abs(a.value() - b.value()) > manoeuvre.tolerance();
        }
        return !with.equals(without);
    }

    /** Where several ailments do the same, taking one away changes nothing: blame each that lies on the way. */
    private static List<Ailment> touching(Body body, Manoeuvre manoeuvre, Probe probe, SignReader reader) {
        return body.ailments().stream()
                .filter(ailment ->
                        !hurt(body, manoeuvre, probe, reader, List.of(ailment)).isEmpty())
                .toList();
    }

    private record Hurt(Set<String> strands, Set<String> divisions, List<Site> sites) {
        boolean isEmpty() {
            return strands.isEmpty();
        }
    }

    private static Hurt hurt(Body body, Manoeuvre manoeuvre, Probe probe, SignReader reader, List<Ailment> ailments) {
        Set<String> strands = new LinkedHashSet<>();
        Set<String> divisions = new LinkedHashSet<>();
        List<Site> sites = new ArrayList<>();
        Body alone = body.with(ailments);
        for (Strand strand : reader.strands(body, manoeuvre, probe)) {
            if (alone.conduction(strand.pathway()) > 1 - HURT) {
                continue;
            }
            strands.add(strand.role());
            Set<Site> passed = strand.pathway().sites();
            for (Ailment ailment : ailments) {
                for (Lesion lesion : ailment.lesions()) {
                    if (lesion.loss() > 0 && passed.stream().anyMatch(lesion.site()::covers)) {
                        divisions.add(strand.role() + "/"
                                + body.anatomy()
                                        .structure(lesion.site().structure())
                                        .division());
                        if (!sites.contains(lesion.site())) {
                            sites.add(lesion.site());
                        }
                    }
                }
            }
        }
        for (String quantity : reader.quantities(body, manoeuvre, probe)) {
            double shift = ailments.stream()
                    .mapToDouble(a -> a.shifts().getOrDefault(quantity, 0.0))
                    .sum();
            if (shift != 0) {
                strands.add(quantity);
                strands.add((shift > 0 ? "more " : "less ") + quantity);
                strands.add(Quantity.family(quantity));
            }
        }
        return new Hurt(strands, divisions, sites);
    }

    /** Whether the finding is more or less than the same person would show in health; blank if neither. */
    private static String direction(Body body, Manoeuvre manoeuvre, Probe probe, SignReader reader, Finding finding) {
        Finding healthy = reader.find(body.healthy(), manoeuvre, probe);
        double difference = 0;
        if (finding instanceof Finding.Graded a && healthy instanceof Finding.Graded b) {
            difference = a.amount() - b.amount();
        } else if (finding instanceof Finding.Measured a && healthy instanceof Finding.Measured b) {
            difference = a.value() - b.value();
        }
        return difference > 0 ? "more" : difference < 0 ? "less" : "";
    }

    private String term(Hurt hurt, String direction) {
        return terms.stream()
                .filter(term -> matches(term, hurt, direction))
                .map(MeaningTerm::id)
                .findFirst()
                .orElse("unexplained");
    }

    private static boolean matches(MeaningTerm term, Hurt hurt, String direction) {
        boolean strand = hurt.strands.contains(term.strand());
        boolean way = term.direction().isBlank() || term.direction().equals(direction);
        boolean division = term.divisions().isBlank()
                || Arrays.stream(term.divisions().split("\\|", -1))
                        .anyMatch(d -> hurt.divisions.contains(term.strand() + "/" + d));
        return strand && way && division;
    }

    private Meaning meaning(String id, List<String> ailments, List<Site> sites) {
        Optional<MeaningTerm> term =
                terms.stream().filter(t -> t.id().equals(id)).findFirst();
        String text = term.map(MeaningTerm::name).orElse("not explained by what is tabled");
        return new Meaning(id, ailments.isEmpty() ? text : text + ": " + String.join("; ", ailments), ailments, sites);
    }
}

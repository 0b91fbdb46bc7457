package org.manubrium.patient.sign;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.anatomy.Site;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Meaning;
import org.manubrium.patient.MeaningTerm;

/**
 * Explains a finding by taking ailments away: what changes it when removed is what explains it. The term then follows from
 * the strand of pathway, and the part of the nervous system, whose mending brings the finding nearest to health.
 */
public final class Meanings {
    /** The term for a finding that is what this person would show in health. */
    public static final String NORMAL = "nothing-abnormal";

    /** The term for a finding that only old leftovers explain. */
    public static final String OLD = "old-nothing-new";

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
                .filter(ailment ->
                        changes(Signs.found(reader, body.without(ailment), manoeuvre, probe), finding, manoeuvre))
                .toList();
        List<Strand> strands = reader.strands(body, manoeuvre, probe);
        Set<String> quantities = reader.quantities(body, manoeuvre, probe);
        List<Ailment> blamed = guilty.isEmpty() ? touching(body, strands, quantities) : guilty;
        List<Hurt> all = Hurt.of(body, blamed, strands, quantities);
        List<String> names = blamed.stream().map(Ailment::name).toList();
        if (!blamed.isEmpty() && blamed.stream().allMatch(Ailment::old)) {
            return meaning(OLD, names, sites(all));
        }
        Finding healthy = Signs.found(reader, body.healthy(), manoeuvre, probe);
        List<Hurt> owed = new Mending(body, manoeuvre, probe, reader, finding, healthy).owed(all);
        return meaning(term(owed, direction(finding, healthy)), names, sites(owed));
    }

    private static List<Site> sites(List<Hurt> hurts) {
        return hurts.stream().flatMap(hurt -> hurt.sites().stream()).distinct().toList();
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
    private static List<Ailment> touching(Body body, List<Strand> strands, Set<String> quantities) {
        return body.ailments().stream()
                .filter(ailment ->
                        !Hurt.of(body, List.of(ailment), strands, quantities).isEmpty())
                .toList();
    }

    /** Whether the finding is more or less than the same person would show in health; blank if neither. */
    private static String direction(Finding finding, Finding healthy) {
        double difference = 0;
        if (finding instanceof Finding.Graded a && healthy instanceof Finding.Graded b) {
            difference = a.amount() - b.amount();
        } else if (finding instanceof Finding.Measured a && healthy instanceof Finding.Measured b) {
            difference = a.value() - b.value();
        }
        return difference > 0 ? "more" : difference < 0 ? "less" : "";
    }

    private String term(List<Hurt> owed, String direction) {
        return terms.stream()
                .filter(term -> owed.stream().anyMatch(hurt -> matches(term, hurt, direction)))
                .map(MeaningTerm::id)
                .findFirst()
                .orElse("unexplained");
    }

    private static boolean matches(MeaningTerm term, Hurt hurt, String direction) {
        boolean way = term.direction().isBlank() || term.direction().equals(direction);
        boolean division = term.divisions().isBlank()
                || List.of(term.divisions().split("\\|", -1)).contains(hurt.division());
        return hurt.names().contains(term.strand()) && way && division;
    }

    private Meaning meaning(String id, List<String> ailments, List<Site> sites) {
        Optional<MeaningTerm> term =
                terms.stream().filter(t -> t.id().equals(id)).findFirst();
        String text = term.map(MeaningTerm::name).orElse("not explained by what is tabled");
        return new Meaning(id, ailments.isEmpty() ? text : text + ": " + String.join("; ", ailments), ailments, sites);
    }
}

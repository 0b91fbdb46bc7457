package org.manubrium.marking;

import java.util.List;
import org.manubrium.marking.key.Origin;

/**
 * The mark of one attempt, line by line.
 *
 * @param total per cent, the domains weighed; domains without a line that scores are left out
 * @param harms what should not have been done, beside the mark and never taken off it
 * @param handling how the patient was handled, beside the mark
 * @param besides parts of the profile that an educator lets count, none unless one does
 * @param notes what is worth knowing and counts for nothing
 */
public record MarkSheet(
        String caseId,
        String convention,
        double total,
        List<Domain> domains,
        List<Harm> harms,
        List<Handled> handling,
        List<Beside> besides,
        List<String> notes) {
    public MarkSheet {
        handling = List.copyOf(handling);
        besides = List.copyOf(besides);
        domains = List.copyOf(domains);
        harms = List.copyOf(harms);
        notes = List.copyOf(notes);
    }

    /** One without anything said of handling, and without a part of the profile. */
    public MarkSheet(
            String caseId,
            String convention,
            double total,
            List<Domain> domains,
            List<Harm> harms,
            List<String> notes) {
        this(caseId, convention, total, domains, harms, List.of(), List.of(), notes);
    }

    /** Every line of every domain, in order. */
    public List<Line> lines() {
        return domains.stream().flatMap(domain -> domain.lines().stream()).toList();
    }

    public Domain domain(DomainName name) {
        return domains.stream().filter(d -> d.name() == name).findFirst().orElseThrow();
    }

    /** One domain: the mean credit of its lines that score, per cent; 0 if it has none. */
    public record Domain(DomainName name, double percent, double weight, List<Line> lines) {
        public Domain {
            lines = List.copyOf(lines);
        }

        static Domain of(DomainName name, double weight, List<Line> lines) {
            double mean = lines.stream()
                    .filter(Line::scored)
                    .mapToDouble(Line::credit)
                    .average()
                    .orElse(0);
            return new Domain(name, 100 * mean, weight, lines);
        }

        /** Whether anything in it scores. */
        public boolean scored() {
            return lines.stream().anyMatch(Line::scored);
        }
    }

    /**
     * One thing that was marked.
     *
     * @param id the same in every attempt at this case version, so that attempts can be laid side by side
     * @param done what the student did; blank for nothing
     * @param key what was right
     * @param credit 0..1
     * @param standing the rows behind it that nobody has checked, and whether it scores all the same
     */
    public record Line(
            String id,
            DomainName domain,
            String asked,
            String done,
            String key,
            double credit,
            String why,
            Origin origin,
            Standing standing) {

        /** One that scores and stands on nothing unchecked but, maybe, its own origin. */
        public Line(
                String id,
                DomainName domain,
                String asked,
                String done,
                String key,
                double credit,
                String why,
                Origin origin) {
            this(id, domain, asked, done, key, credit, why, origin, Standing.of(List.of(origin)));
        }

        /** Whether a text behind it was never opened here and no educator has confirmed it. */
        public boolean unverified() {
            return !standing.unchecked().isEmpty();
        }

        /** Whether it counts in its domain; one that does not neither earns nor costs. */
        public boolean scored() {
            return standing.scored();
        }

        /** The same on another standing. */
        Line on(Standing other) {
            return new Line(id, domain, asked, done, key, credit, why, origin, other);
        }
    }

    /** One thing about handling, done well or not. */
    public record Handled(String id, String text, boolean well, String why, Origin origin) {}

    /** A part of the profile that counts: per cent, and how much. */
    public record Beside(String name, double percent, double weight) {}

    /** Something that should not have been done as it was. */
    public record Harm(String id, String text, Origin origin) {}
}

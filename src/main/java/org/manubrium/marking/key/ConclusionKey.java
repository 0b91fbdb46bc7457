package org.manubrium.marking.key;

import java.util.List;

/**
 * What should stand at the end.
 *
 * @param sites one for each new lesion; empty if the patient has none
 * @param truths what ails the patient
 * @param differential everything the case asks to be told apart
 * @param expected what each diagnosis would change; empty if that is not asked beforehand
 * @param next ids of the next steps that are right; empty if none is asked
 */
public record ConclusionKey(
        List<SiteKey> sites,
        List<Diagnosis> truths,
        List<Diagnosis> differential,
        List<String> next,
        Origin origin,
        List<Expectation> expected) {
    public ConclusionKey {
        expected = List.copyOf(expected);
        sites = List.copyOf(sites);
        truths = List.copyOf(truths);
        differential = List.copyOf(differential);
        next = List.copyOf(next);
    }

    /** One that asks nothing beforehand. */
    public ConclusionKey(
            List<SiteKey> sites,
            List<Diagnosis> truths,
            List<Diagnosis> differential,
            List<String> next,
            Origin origin) {
        this(sites, truths, differential, next, origin, List.of());
    }

    /** The same, asking beforehand what to expect. */
    public ConclusionKey expecting(List<Expectation> others) {
        return new ConclusionKey(sites, truths, differential, next, origin, others);
    }

    /** A diagnosis and the ids that count as the same. */
    public record Diagnosis(String id, String name, List<String> alternatives) {
        public Diagnosis {
            alternatives = List.copyOf(alternatives);
        }

        public boolean accepts(String named) {
            return id.equals(named) || alternatives.contains(named);
        }
    }
}

package org.manubrium.marking.key;

import java.util.List;

/**
 * What should stand at the end.
 *
 * @param sites one for each new lesion; empty if the patient has none
 * @param truths what ails the patient
 * @param differential everything the case asks to be told apart
 * @param next ids of the next steps that are right; empty if none is asked
 */
public record ConclusionKey(
        List<SiteKey> sites, List<Diagnosis> truths, List<Diagnosis> differential, List<String> next, Origin origin) {
    public ConclusionKey {
        sites = List.copyOf(sites);
        truths = List.copyOf(truths);
        differential = List.copyOf(differential);
        next = List.copyOf(next);
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

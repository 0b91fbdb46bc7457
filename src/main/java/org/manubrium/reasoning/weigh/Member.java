package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Variation;

/**
 * One concrete body of a candidate.
 *
 * @param kind the number of the fully developed body it is a form of
 * @param severity how far the illness has gone, 0..1
 * @param slot from which natural variation its traits are drawn
 * @param weight its share of the candidate
 */
record Member(int candidate, int kind, double severity, int slot, double weight) {
    /** How far the illness has gone: from what hardly shows to all that it can do. */
    private static final List<Double> SEVERITIES = List.of(0.08, 0.2, 0.4, 0.6, 0.8, 1.0);

    private static final double MIDDLE = 0.8;

    /** Natural variations; 0 is the average person. */
    private static final long[] SEEDS = {0, 1, 2, 3, 4};

    static final int SLOTS = SEEDS.length;

    /**
     * Every body of the candidates. Before anything published is minded, one that is further gone is likelier, because ill
     * people come when they notice something.
     */
    static List<Member> all(List<Candidate> candidates) {
        List<Member> members = new ArrayList<>();
        int kind = 0;
        for (int c = 0; c < candidates.size(); c++) {
            List<Member> own = new ArrayList<>();
            int bodies = candidates.get(c).bodies().size();
            for (int b = 0; b < bodies; b++, kind++) {
                own.addAll(of(c, kind, bodies == 1 ? SEVERITIES : List.of(MIDDLE)));
            }
            double sum = own.stream().mapToDouble(Member::weight).sum();
            own.forEach(m -> members.add(new Member(m.candidate, m.kind, m.severity, m.slot, m.weight / sum)));
        }
        return members;
    }

    private static List<Member> of(int candidate, int kind, List<Double> severities) {
        List<Member> members = new ArrayList<>();
        for (double severity : severities) {
            for (int slot = 0; slot < SLOTS; slot++) {
                members.add(new Member(candidate, kind, severity, slot, severity));
            }
        }
        return members;
    }

    /**
     * The natural variation from which this body draws one kind of trait. Traits of different kinds are drawn apart, so that
     * to know one says little of the next; each kind of trait is as common in every candidate.
     */
    long seed(String trait) {
        int turn = Math.floorMod(trait.hashCode() + 31 * candidate + (int) Math.round(severity * 100), SLOTS);
        return SEEDS[(slot + turn) % SLOTS];
    }

    static long[] seeds() {
        return SEEDS.clone();
    }

    /** The same illness so far gone, in the person of this natural variation; what is old is as it is. */
    static Body at(Body full, double severity, long seed) {
        Person person = full.person().varied(Variation.of(seed));
        return new Body(
                full.anatomy(),
                full.physiology(),
                person,
                full.ailments().stream()
                        .map(ailment -> ailment.old() ? ailment : scaled(ailment, severity))
                        .toList());
    }

    private static Ailment scaled(Ailment ailment, double severity) {
        return severity == 1 ? ailment : ailment.scaled(severity);
    }
}

package org.manubrium.reasoning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.reasoning.Shortest.Sufficient;

/** Says what each manoeuvre is worth in one case. */
public final class Verdicts {
    private final Evidence evidence;
    private final Set<String> risks;

    /** @param risks cautions and kinds of intimacy that need a reason */
    public Verdicts(Evidence evidence, Set<String> risks) {
        this.evidence = evidence;
        this.risks = Set.copyOf(risks);
    }

    /** The verdict on every manoeuvre that is not merely unneeded, in table order. */
    public List<Verdict> of(Collection<Manoeuvre> manoeuvres, Collection<Sufficient> sufficient) {
        Set<String> essential = sufficient.stream()
                .flatMap(s -> s.columns().stream())
                .map(c -> evidence.columns().get(c).item().manoeuvre())
                .collect(Collectors.toSet());
        List<Verdict> found = new ArrayList<>();
        Belief start = evidence.start();
        for (Manoeuvre manoeuvre : manoeuvres) {
            double bits = most(start, manoeuvre.id());
            if (essential.contains(manoeuvre.id())) {
                found.add(
                        verdict(manoeuvre, Worth.ESSENTIAL, bits, "The shortest examination that suffices holds it."));
            } else if (bits >= Advice.LITTLE) {
                found.add(verdict(manoeuvre, Worth.USEFUL, bits, "By itself it tells something."));
            } else if (risky(manoeuvre)) {
                found.add(verdict(
                        manoeuvre, Worth.HARMFUL, bits, "It can hurt or embarrass, and tells next to nothing here."));
            }
        }
        return found;
    }

    private static Verdict verdict(Manoeuvre manoeuvre, Worth worth, double bits, String why) {
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.3f", bits));
        return new Verdict(manoeuvre.id(), worth, rounded, why);
    }

    private double most(Belief start, String manoeuvre) {
        return IntStream.range(0, evidence.columns().size())
                .filter(c -> evidence.columns().get(c).item().manoeuvre().equals(manoeuvre))
                .mapToDouble(start::information)
                .max()
                .orElse(0);
    }

    private boolean risky(Manoeuvre manoeuvre) {
        return risks.contains(manoeuvre.intimacy())
                || manoeuvre.cautions().stream().anyMatch(risks::contains);
    }
}

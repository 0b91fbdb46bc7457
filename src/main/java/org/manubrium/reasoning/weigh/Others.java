package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Quantity;

/**
 * What the patient may have if it is none of what the case names: the tabled conditions that take the most of the same
 * structures and quantities, on the side of the illness, and health
 * where the case does not name it.
 */
final class Others {
    private static final int MOST = 6;

    private final Conditions conditions;

    Others(Conditions conditions) {
        this.conditions = conditions;
    }

    /** @param chance of it beforehand, 0..1 */
    Candidate candidate(Differential differential, double chance) {
        double named = differential.candidates().stream()
                .mapToDouble(Candidate::weight)
                .sum();
        return new Candidate(
                "none-of-these", "none of these", named * chance / (1 - chance), false, bodies(differential));
    }

    private List<Body> bodies(Differential differential) {
        Body patient = differential.patient();
        List<Ailment> old = patient.ailments().stream().filter(Ailment::old).toList();
        List<Body> found = new ArrayList<>();
        if (differential.candidates().stream().noneMatch(Others::well)) {
            found.add(patient.with(old));
        }
        Set<String> taken = new HashSet<>();
        differential.candidates().forEach(c -> c.bodies().forEach(body -> taken.addAll(parts(body.ailments()))));
        Set<String> named = names(differential);
        Side side = side(differential);
        conditions.all().stream()
                .filter(c -> !c.old() && !c.effects().isEmpty())
                .map(c -> like(c, side, differential))
                .filter(ailment -> !named.contains(ailment.name()))
                .sorted(Comparator.comparingDouble(ailment -> -alike(parts(List.of(ailment)), taken)))
                .limit(MOST)
                .forEach(ailment -> found.add(with(patient, old, ailment)));
        return found;
    }

    private static boolean well(Candidate candidate) {
        return candidate.bodies().stream()
                .allMatch(body -> body.ailments().stream()
                        .allMatch(a ->
                                a.old() || (a.lesions().isEmpty() && a.shifts().isEmpty())));
    }

    private static Body with(Body patient, List<Ailment> old, Ailment ailment) {
        List<Ailment> all = new ArrayList<>(old);
        all.add(ailment);
        return patient.with(all);
    }

    private static Set<String> names(Differential differential) {
        Set<String> names = new HashSet<>();
        differential
                .candidates()
                .forEach(c -> c.bodies().forEach(b -> b.ailments().forEach(a -> names.add(a.name()))));
        return names;
    }

    private static Side side(Differential differential) {
        return differential.candidates().stream()
                .flatMap(c -> c.bodies().stream())
                .flatMap(body -> body.ailments().stream())
                .filter(ailment -> !ailment.old())
                .flatMap(ailment -> ailment.lesions().stream())
                .map(lesion -> lesion.site().side())
                .filter(side -> side != Side.NONE)
                .findFirst()
                .orElse(Side.RIGHT);
    }

    private Ailment like(Condition condition, Side side, Differential differential) {
        Optional<String> level = condition.levels().stream()
                .filter(l -> names(differential).stream().anyMatch(name -> name.contains(", " + l)))
                .findFirst()
                .or(() -> condition.levels().stream().findFirst());
        return conditions.ailment(condition, condition.sided() ? side : Side.NONE, level, 1, Optional.empty());
    }

    private static Set<String> parts(List<Ailment> ailments) {
        Set<String> parts = new HashSet<>();
        for (Ailment ailment : ailments) {
            if (!ailment.old()) {
                ailment.lesions().forEach(lesion -> parts.add(lesion.site().structure()));
                ailment.shifts().keySet().forEach(id -> parts.add(Quantity.family(id)));
            }
        }
        return parts;
    }

    /** The share of all parts taken by either that both take. */
    private static double alike(Set<String> one, Set<String> other) {
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        Set<String> either = new HashSet<>(one);
        either.addAll(other);
        return either.isEmpty() ? 0 : both.size() / (double) either.size();
    }
}

package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.compile.CaseWeigher.Weighed;
import org.manubrium.marking.key.KeyLine.Necessity;
import org.manubrium.reasoning.Worth;

/**
 * Chooses on which manoeuvres a case turns, from what each tells in it. First come those of the shortest examination that
 * suffices. It is a bare minimum, in which one slip goes unnoticed; so, beside it, each rival is to be told apart in each of at most
 * {@value #SYSTEMS} systems (reflexes, power, feeling …), because signs of several systems agree only in the truth; twice
 * where there is only one system. A manoeuvre tells the patient from a rival when their readings differ on either side; one
 * that tells less than a little of the differential is taken only for a rival that nothing better tells. The systems in which the patient shows anything come first: a case turns
 * on what is wrong, and what is not is asked of only where nothing else tells a rival. Again and again the manoeuvre is
 * taken that meets most of these needs per second, ties in table order. What is not done in every examination, and a point
 * of the skin without a root of its own, is taken only for what nothing else tells. What is taken is a {@link Unit}: both
 * sides of a manoeuvre, at one point if it is done at points.
 */
final class Essentials {
    /**
     * What is chosen as one.
     *
     * @param plain whether it is looked at first
     * @param tells the places, in the list of rivals, of those it tells from the patient
     */
    record Unit(String manoeuvre, String place, String system, boolean plain, int seconds, List<Integer> tells) {}

    private record Need(int rival, String system) {}

    /** In how many systems a rival is to be told apart, where there are so many. */
    static final int SYSTEMS = 3;

    private final List<String> rivals;
    private final OptionalInt health;
    private final Weighed weighed;

    /**
     * @param rivals the names of the rivals
     * @param health the place among them of the person without the illness
     * @param weighed what each manoeuvre tells in this case
     */
    Essentials(List<String> rivals, OptionalInt health, Weighed weighed) {
        this.rivals = rivals;
        this.health = health;
        this.weighed = weighed;
    }

    /** Which units are essential, or were decided not to be, and why. */
    Map<Unit, Necessity> choose(List<Unit> units, List<EssentialChoice> choices) {
        Map<Unit, Necessity> found = new LinkedHashMap<>();
        List<Unit> cover = cover(units);
        Stream.concat(units.stream().filter(unit -> suffices(unit) && !standsIn(cover, unit)), cover.stream())
                .forEach(unit -> found.put(unit, new Necessity(true, reason(unit))));
        for (Unit unit : units) {
            choices.stream()
                    .filter(choice -> choice.touches(unit.manoeuvre(), unit.place()))
                    .reduce((first, last) -> last)
                    .ifPresent(choice -> found.put(
                            unit, new Necessity(choice.essential(), "The educator's choice: " + choice.reason())));
        }
        return found;
    }

    private List<Unit> cover(List<Unit> units) {
        Map<Need, Integer> needs = needs(units);
        List<Unit> taken = new ArrayList<>();
        List<Unit> informing = units.stream().filter(this::informs).toList();
        for (List<Unit> among : List.of(informing, units)) {
            take(among.stream().filter(Unit::plain).toList(), needs, taken);
            take(among, needs, taken);
        }
        return taken;
    }

    /** Whether something of its system that is always looked at is taken anyway, and stands for this point. */
    private boolean standsIn(List<Unit> taken, Unit unit) {
        return !unit.plain()
                && !unit.place().isEmpty()
                && taken.stream()
                        .filter(other -> other.plain() && other.system().equals(unit.system()))
                        .anyMatch(other -> !other.place().isEmpty() || bits(other) > bits(unit));
    }

    private double bits(Unit unit) {
        return weighed.weighing().bits(unit.manoeuvre());
    }

    private boolean suffices(Unit unit) {
        return weighed.shortest().stream()
                .anyMatch(item -> item.manoeuvre().equals(unit.manoeuvre())
                        && (unit.place().isEmpty() || unit.place().equals(item.place())));
    }

    private boolean informs(Unit unit) {
        return Set.of(Worth.ESSENTIAL, Worth.USEFUL).contains(weighed.weighing().worth(unit.manoeuvre()));
    }

    private Map<Need, Integer> needs(List<Unit> units) {
        Map<Need, Integer> needs = new LinkedHashMap<>();
        Set<String> showing = units.stream()
                .filter(u -> health.isPresent() && u.tells().contains(health.getAsInt()))
                .map(Unit::system)
                .collect(Collectors.toSet());
        for (int rival = 0; rival < rivals.size(); rival++) {
            int one = rival;
            List<Unit> all = units.stream().filter(u -> u.tells().contains(one)).toList();
            List<Unit> informing = all.stream().filter(this::informs).toList();
            List<Unit> telling = informing.isEmpty() ? all : informing;
            List<String> systems = systems(telling, showing);
            int times = systems.size() == 1 ? Math.min(2, telling.size()) : 1;
            systems.forEach(system -> needs.put(new Need(one, system), times));
        }
        return needs;
    }

    private static List<String> systems(List<Unit> telling, Set<String> showing) {
        List<String> all = telling.stream().map(Unit::system).distinct().toList();
        List<String> ill = all.stream().filter(showing::contains).toList();
        return (ill.isEmpty() ? all : ill).stream().limit(SYSTEMS).toList();
    }

    private static void take(List<Unit> units, Map<Need, Integer> needs, List<Unit> taken) {
        Optional<Unit> best = best(units, needs, taken);
        while (best.isPresent()) {
            Unit unit = best.get();
            met(unit, needs).forEach(need -> needs.merge(need, -1, Integer::sum));
            taken.add(unit);
            best = best(units, needs, taken);
        }
    }

    /** The unit worth most per second; of equals the first. */
    private static Optional<Unit> best(List<Unit> units, Map<Need, Integer> needs, List<Unit> taken) {
        return units.stream()
                .filter(unit -> !taken.contains(unit) && worth(unit, needs) > 0)
                .min(Comparator.comparingDouble((Unit unit) -> -worth(unit, needs)));
    }

    private static double worth(Unit unit, Map<Need, Integer> needs) {
        return met(unit, needs).size() / (double) Math.max(1, unit.seconds());
    }

    private static List<Need> met(Unit unit, Map<Need, Integer> needs) {
        return unit.tells().stream()
                .map(rival -> new Need(rival, unit.system()))
                .filter(need -> needs.getOrDefault(need, 0) > 0)
                .toList();
    }

    private String reason(Unit unit) {
        return (suffices(unit) ? "The shortest examination that suffices holds it. " : "")
                + "It tells this patient from: "
                + String.join("; ", unit.tells().stream().map(rivals::get).toList()) + ".";
    }
}

package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.key.KeyLine.Necessity;

/**
 * Chooses on which manoeuvres a case turns. A manoeuvre tells the patient from a rival when their readings differ on either
 * side. Again and again the one is taken that tells the patient from most rivals that still need it, per second, ties in
 * table order, until each rival is told apart by two (or by as many as there are). Each taken one is a {@link Unit}: both
 * sides of a manoeuvre, at one point if it is done at points.
 */
final class Essentials {
    private static final int TWICE = 2;

    /** What is chosen as one. {@code tells} are the places of the rivals in the list of rivals. */
    record Unit(String manoeuvre, String place, int seconds, List<Integer> tells) {}

    private final List<String> rivals;

    /** @param rivals the names of the rivals, the healthy person among them */
    Essentials(List<String> rivals) {
        this.rivals = rivals;
    }

    /** The reason for each unit that is essential; units in table order. */
    Map<Unit, Necessity> choose(List<Unit> units, List<EssentialChoice> choices) {
        Map<Unit, Necessity> found = new LinkedHashMap<>();
        cover(units).forEach(unit -> found.put(unit, new Necessity(true, reason(unit))));
        for (Unit unit : units) {
            choices.stream()
                    .filter(c -> c.manoeuvre().equals(unit.manoeuvre())
                            && (c.place().isBlank() || c.place().equals(unit.place())))
                    .reduce((first, last) -> last)
                    .ifPresent(
                            c -> found.put(unit, new Necessity(c.essential(), "The educator's choice: " + c.reason())));
        }
        return found;
    }

    private List<Unit> cover(List<Unit> units) {
        int[] needed = needed(units);
        List<Unit> left = new ArrayList<>(units);
        List<Unit> taken = new ArrayList<>();
        Optional<Unit> best = best(left, needed);
        while (best.isPresent()) {
            Unit unit = best.get();
            unit.tells().forEach(rival -> needed[rival] = Math.max(0, needed[rival] - 1));
            taken.add(unit);
            left.remove(unit);
            best = best(left, needed);
        }
        return taken;
    }

    private int[] needed(List<Unit> units) {
        return IntStream.range(0, rivals.size())
                .map(rival -> (int) Math.min(
                        TWICE,
                        units.stream().filter(u -> u.tells().contains(rival)).count()))
                .toArray();
    }

    /** The unit worth most per second; of equals the first. */
    private static Optional<Unit> best(List<Unit> units, int[] needed) {
        return units.stream()
                .filter(unit -> worth(unit, needed) > 0)
                .min(Comparator.comparingDouble((Unit unit) -> -worth(unit, needed)));
    }

    private static double worth(Unit unit, int[] needed) {
        long told = unit.tells().stream().filter(rival -> needed[rival] > 0).count();
        return told / (double) Math.max(1, unit.seconds());
    }

    private String reason(Unit unit) {
        return "It tells this patient from: "
                + String.join("; ", unit.tells().stream().map(rivals::get).toList()) + ".";
    }
}

package org.manubrium.school.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Students by the mean of their first attempts at the set cases that count. Means that are equal to the one decimal shown
 * share a place, and the next place is missed out (1, 1, 3). Whoever has handed in fewer than {@code least} of the cases
 * is listed apart.
 *
 * @param counted how many set cases count
 * @param least half of them, rounded up, and at least one
 */
public record Leaderboard(List<Place> ranked, List<Place> apart, int counted, int least) {
    private static final double TENTHS = 10;

    public Leaderboard {
        ranked = List.copyOf(ranked);
        apart = List.copyOf(apart);
    }

    /**
     * Where somebody stands.
     *
     * @param rank from 1; 0 for those apart
     * @param handedIn how many of the cases that count
     * @param mean per cent, rounded to a tenth; empty if nothing was handed in
     */
    public record Place(int rank, Student student, int handedIn, OptionalDouble mean) {}

    /** @param totals for each set case that counts, the total in per cent of each student's first attempt, by account */
    static Leaderboard of(List<Student> students, List<Map<Long, Double>> totals) {
        int least = Math.max(1, (totals.size() + 1) / 2);
        List<Place> all = students.stream()
                .map(student -> place(student, totals))
                .sorted(Comparator.comparingDouble(
                                (Place place) -> -place.mean().orElse(0))
                        .thenComparing(place -> place.student().shownAs()))
                .toList();
        List<Place> enough =
                all.stream().filter(place -> place.handedIn() >= least).toList();
        List<Place> apart = all.stream()
                .filter(place -> place.handedIn() < least)
                .sorted(Comparator.comparing(place -> place.student().shownAs()))
                .toList();
        return new Leaderboard(ranked(enough), apart, totals.size(), least);
    }

    /** How it is made, in one sentence. */
    public String howMade() {
        return "By the mean of first attempts at the " + (counted == 1 ? "one set case" : counted + " set cases")
                + " closed so far or handed in by everyone; means equal to one decimal share a place, and whoever has"
                + " handed in " + (least == 1 ? "none" : "fewer than " + least) + " of them is listed apart.";
    }

    private static Place place(Student student, List<Map<Long, Double>> totals) {
        List<Double> own = totals.stream()
                .filter(set -> set.containsKey(student.account()))
                .map(set -> set.getOrDefault(student.account(), 0.0))
                .toList();
        OptionalDouble mean = own.stream().mapToDouble(Double::doubleValue).average();
        OptionalDouble shown =
                mean.isPresent() ? OptionalDouble.of(Math.round(mean.getAsDouble() * TENTHS) / TENTHS) : mean;
        return new Place(0, student, own.size(), shown);
    }

    private static List<Place> ranked(List<Place> byMean) {
        List<Place> ranked = new ArrayList<>();
        for (Place place : byMean) {
            int next = ranked.size() + 1;
            boolean tie = next > 1 && ranked.get(next - 2).mean().equals(place.mean());
            int rank = tie ? ranked.get(next - 2).rank() : next;
            ranked.add(new Place(rank, place.student(), place.handedIn(), place.mean()));
        }
        return ranked;
    }
}

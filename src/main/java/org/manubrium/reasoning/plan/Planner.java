package org.manubrium.reasoning.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.manubrium.reasoning.plan.Plan.Stop;

/**
 * Finds the plan that takes the least time, and of those the one that moves the patient least. Exact: for each set of
 * positions and each position to end in, the cheapest way through is built from the sets with one position less.
 */
public final class Planner {
    private static final long NONE = Long.MAX_VALUE / 4;

    private final Ways ways;

    public Planner(Ways ways) {
        this.ways = ways;
    }

    /**
     * The best plan for these tasks.
     *
     * @param start how the patient lies at first
     * @throws IllegalArgumentException if a task can be done nowhere
     */
    public Plan best(Collection<Task> tasks, String start) {
        List<Integer> places = places(tasks, start);
        int[] allowed = tasks.stream().mapToInt(task -> allowed(task, places)).toArray();
        int doing = tasks.stream().mapToInt(Task::seconds).sum();
        List<Integer> route = new Search(places, allowed).route();
        return plan(tasks, route, doing);
    }

    private List<Integer> places(Collection<Task> tasks, String start) {
        Set<Integer> places = new LinkedHashSet<>(List.of(ways.index(start)));
        tasks.forEach(task -> task.positions().forEach(position -> places.add(ways.index(position))));
        return new ArrayList<>(places);
    }

    private int allowed(Task task, List<Integer> places) {
        if (task.positions().isEmpty()) {
            throw new IllegalArgumentException(task.name() + " can be done in no position");
        }
        return task.positions().stream()
                .mapToInt(position -> 1 << places.indexOf(ways.index(position)))
                .reduce(0, (a, b) -> a | b);
    }

    /** One search; the start is place 0. Sets of places are bit masks. */
    private final class Search {
        private final List<Integer> places;
        private final int[] allowed;
        private final long[][] cost;
        private final int[][] before;

        Search(List<Integer> places, int[] allowed) {
            this.places = places;
            this.allowed = allowed;
            this.cost = new long[1 << places.size()][places.size()];
            this.before = new int[cost.length][places.size()];
            Arrays.stream(cost).forEach(row -> Arrays.fill(row, NONE));
            cost[1][0] = 0;
        }

        List<Integer> route() {
            int bestSet = 0;
            int bestEnd = 0;
            long best = NONE;
            for (int set = 1; set < cost.length; set += 2) {
                boolean enough = covers(set);
                for (int end = 0; end < places.size(); end++) {
                    if (enough && cost[set][end] < best) {
                        best = cost[set][end];
                        bestSet = set;
                        bestEnd = end;
                    }
                    extend(set, end);
                }
            }
            return back(bestSet, bestEnd);
        }

        private boolean covers(int set) {
            return Arrays.stream(allowed).allMatch(places -> (places & set) != 0);
        }

        private void extend(int set, int end) {
            if (cost[set][end] >= NONE) {
                return;
            }
            for (int to = 1; to < places.size(); to++) {
                int larger = set | 1 << to;
                long sum = cost[set][end] + ways.cost(places.get(end), places.get(to));
                if (larger != set && sum < cost[larger][to]) {
                    cost[larger][to] = sum;
                    before[larger][to] = end;
                }
            }
        }

        private List<Integer> back(int set, int end) {
            List<Integer> visited = new ArrayList<>(List.of(places.get(end)));
            int left = set;
            int at = end;
            while (left != 1) {
                int from = before[left][at];
                left &= ~(1 << at);
                at = from;
                visited.add(0, places.get(at));
            }
            return visited;
        }
    }

    private Plan plan(Collection<Task> tasks, List<Integer> visited, int doing) {
        List<Integer> route = new ArrayList<>(List.of(visited.get(0)));
        int moving = 0;
        for (int i = 1; i < visited.size(); i++) {
            route.addAll(ways.passed(visited.get(i - 1), visited.get(i)));
            moving += (int) (ways.cost(visited.get(i - 1), visited.get(i)) / Ways.SECOND);
        }
        List<Task> left = new ArrayList<>(tasks);
        List<Stop> stops = new ArrayList<>();
        for (int place : route) {
            String position = ways.position(place);
            List<Task> here = left.stream()
                    .filter(task -> task.positions().contains(position))
                    .toList();
            left.removeAll(here);
            stops.add(new Stop(position, here));
        }
        return new Plan(stops, doing + moving, route.size() - 1);
    }
}

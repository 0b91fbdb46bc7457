package org.manubrium.reasoning.plan;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Position;

/** The cheapest way from each position to each other: least seconds, and of equals the fewest changes. */
public final class Ways {
    /** One change weighs less than one second, however many there are. */
    static final long SECOND = 1000;

    private static final long NONE = Long.MAX_VALUE / 4;

    private final List<String> positions;
    private final long[][] cost;
    private final int[][] next;

    public Ways(Examination examination) {
        this.positions = examination.positions().stream().map(Position::id).toList();
        int size = positions.size();
        this.cost = new long[size][size];
        this.next = new int[size][size];
        for (int a = 0; a < size; a++) {
            for (int b = 0; b < size; b++) {
                next[a][b] = b;
                cost[a][b] = a == b ? 0 : direct(examination, positions.get(a), positions.get(b));
            }
        }
        shorten(size);
    }

    private static long direct(Examination examination, String from, String to) {
        return examination.canMove(from, to) ? examination.secondsToMove(from, to) * SECOND + 1 : NONE;
    }

    private void shorten(int size) {
        for (int via = 0; via < size; via++) {
            for (int a = 0; a < size; a++) {
                for (int b = 0; b < size; b++) {
                    if (cost[a][via] + cost[via][b] < cost[a][b]) {
                        cost[a][b] = cost[a][via] + cost[via][b];
                        next[a][b] = next[a][via];
                    }
                }
            }
        }
    }

    /** The place of a position among all. */
    int index(String position) {
        int index = positions.indexOf(position);
        if (index < 0) {
            throw new IllegalArgumentException("no position is called \"" + position + "\"");
        }
        return index;
    }

    int count() {
        return positions.size();
    }

    String position(int index) {
        return positions.get(index);
    }

    /** Seconds and changes as one number, to be compared. */
    long cost(int from, int to) {
        return cost[from][to];
    }

    /** Seconds to bring the patient from one position to another by the cheapest way. */
    public int seconds(String from, String to) {
        return (int) (cost[index(from)][index(to)] / SECOND);
    }

    /** The fewest seconds to bring the patient into one of these positions. */
    public int seconds(String from, List<String> to) {
        return to.stream().mapToInt(position -> seconds(from, position)).min().orElse(0);
    }

    /** The positions passed from one to another, the first left out. */
    List<Integer> passed(int from, int to) {
        List<Integer> passed = new ArrayList<>();
        int at = from;
        while (at != to) {
            at = next[at][to];
            passed.add(at);
        }
        return passed;
    }
}

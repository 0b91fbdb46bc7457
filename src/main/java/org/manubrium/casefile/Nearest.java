package org.manubrium.casefile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Guesses which known word was meant by one that is not known. */
public final class Nearest {
    private Nearest() {}

    /** A longer known word that begins so, else the one that takes the fewest changes, if at most a third of it. */
    public static Optional<String> to(String word, Collection<String> known) {
        String lower = word.toLowerCase(Locale.ROOT);
        Optional<String> longer = known.stream()
                .filter(k -> lower.length() >= 3 && k.toLowerCase(Locale.ROOT).startsWith(lower))
                .min(Comparator.comparingInt(String::length));
        return longer.isPresent() ? longer : changed(lower, known);
    }

    private static Optional<String> changed(String lower, Collection<String> known) {
        return known.stream()
                .filter(k -> distance(lower, k.toLowerCase(Locale.ROOT)) * 3 <= Math.max(lower.length(), k.length()))
                .min(Comparator.comparingInt(k -> distance(lower, k.toLowerCase(Locale.ROOT))));
    }

    /** {@link #to} as the end of a sentence: "; did you mean "…"?", or nothing. */
    public static String hint(String word, Collection<String> known) {
        return to(word, known).map(k -> "; did you mean \"" + k + "\"?").orElse("");
    }

    /** Letters to put in, take out, exchange or swap with their neighbour. */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : step(a, b, i, j, cost);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int step(String a, String b, int i, int j, int[][] cost) {
        int exchange = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(exchange, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}

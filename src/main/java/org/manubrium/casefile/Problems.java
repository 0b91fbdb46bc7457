package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the problems of one file. */
final class Problems {
    private final String path;
    private final List<Problem> found = new ArrayList<>();

    Problems(String path) {
        this.path = path;
    }

    void add(int line, String rule, String text) {
        found.add(new Problem(path, line, rule, text));
    }

    int count() {
        return found.size();
    }

    List<Problem> byLine() {
        return found.stream().sorted(Comparator.comparingInt(Problem::line)).toList();
    }
}

package org.manubrium.tables;

import java.util.List;
import java.util.stream.Collectors;

/** The tables cannot be used; every problem is listed with file and line. */
public final class BadTables extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<TableProblem> problems;

    public BadTables(List<TableProblem> problems) {
        super(problems.stream().map(TableProblem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<TableProblem> problems() {
        return problems;
    }
}

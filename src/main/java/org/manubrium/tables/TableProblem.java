package org.manubrium.tables;

/** What is wrong with a row; {@code line} counts from 1, the header being line 1. */
public record TableProblem(String file, long line, String text) {
    @Override
    public String toString() {
        return file + ":" + line + ": " + text;
    }
}

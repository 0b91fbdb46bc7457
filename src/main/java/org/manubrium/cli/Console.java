package org.manubrium.cli;

import java.io.PrintStream;

/** Where a command writes: results to {@code out}, everything said to a person to {@code err}. */
public record Console(PrintStream out, PrintStream err) {
    public static Console standard() {
        return new Console(System.out, System.err);
    }
}

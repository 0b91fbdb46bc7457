package org.manubrium.cli;

import java.util.List;

/** One thing the programme can be told to do. */
public interface Command {
    /** The word by which it is called. */
    String name();

    /** What it does, in one line. */
    String help();

    /** What may follow the name besides options, as help shows it, such as {@code FILE...}; "" for nothing. */
    default String operands() {
        return "";
    }

    default List<Option> options() {
        return List.of();
    }

    /**
     * Does it. Results go to {@code console.out()}, messages to {@code console.err()}.
     *
     * @throws UsageException if the arguments make no sense together
     */
    ExitCode run(Arguments arguments, Console console);
}

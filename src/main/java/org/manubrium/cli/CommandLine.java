package org.manubrium.cli;

import java.util.List;
import java.util.Optional;

/** Finds the command that was named and runs it. */
public final class CommandLine {
    private final List<Command> commands;
    private final Console console;

    public CommandLine(List<Command> commands, Console console) {
        this.commands = List.copyOf(commands);
        this.console = console;
    }

    /** Runs what the words ask for. Wrong use is explained on the error stream. */
    public ExitCode run(List<String> words) {
        try {
            return dispatch(words);
        } catch (UsageException e) {
            console.err().println(e.getMessage() + ". See: help");
            return ExitCode.WRONG_USE;
        }
    }

    private ExitCode dispatch(List<String> words) {
        if (words.isEmpty()) {
            console.err().print(Help.all(commands));
            return ExitCode.WRONG_USE;
        }
        String first = words.get(0);
        List<String> rest = words.subList(1, words.size());
        if (isHelp(first) || first.equals("help")) {
            return help(rest);
        }
        Command command = named(first);
        List<String> options = rest.contains("--") ? rest.subList(0, rest.indexOf("--")) : rest;
        if (options.stream().anyMatch(CommandLine::isHelp)) {
            return help(List.of(first));
        }
        return command.run(Arguments.parse(command.options(), rest), console);
    }

    private ExitCode help(List<String> about) {
        console.out().print(about.isEmpty() ? Help.all(commands) : Help.of(named(about.get(0))));
        return ExitCode.DONE;
    }

    private Command named(String word) {
        Optional<Command> found =
                commands.stream().filter(command -> command.name().equals(word)).findFirst();
        return found.orElseThrow(() -> new UsageException("unknown command " + word));
    }

    private static boolean isHelp(String word) {
        return word.equals("--help") || word.equals("-h");
    }
}

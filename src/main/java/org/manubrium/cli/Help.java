package org.manubrium.cli;

import java.util.List;
import java.util.stream.Collectors;

/** Help as text. */
final class Help {
    private static final String CALL = "java -jar manubrium.jar ";

    private Help() {}

    static String all(List<Command> commands) {
        return """
                Manubrium: a server of invented patients for teaching physical examination.

                %sCOMMAND [OPTION]... [OPERAND]...

                %s

                %sCOMMAND --help says more. Exit codes: 0 done, 1 found problems, 2 wrong use.
                """.formatted(CALL, lines(commands), CALL);
    }

    static String of(Command command) {
        String head = command.help() + "\n\n" + CALL + command.name()
                + (command.options().isEmpty() ? "" : " [OPTION]...")
                + (command.operands().isEmpty() ? "" : " " + command.operands()) + "\n";
        return command.options().isEmpty() ? head : head + "\n" + options(command.options()) + "\n";
    }

    private static String lines(List<Command> commands) {
        return commands.stream()
                .map(command -> "  %-12s %s".formatted(command.name(), command.help()))
                .collect(Collectors.joining("\n"));
    }

    private static String options(List<Option> options) {
        return options.stream()
                .map(option -> "  %-22s %s".formatted((option.flag() + " " + option.operand()).strip(), text(option)))
                .collect(Collectors.joining("\n"));
    }

    private static String text(Option option) {
        return option.fallback().isEmpty() ? option.help() : option.help() + " [" + option.fallback() + "]";
    }
}

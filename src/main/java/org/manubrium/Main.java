package org.manubrium;

import java.util.List;
import org.manubrium.cli.Command;
import org.manubrium.cli.CommandLine;
import org.manubrium.cli.Console;
import org.manubrium.school.DemoSchool;

/** Entry point: names the commands and hands over to the one that is called. */
public final class Main {
    private static final DemoSchool DEMO_SCHOOL = database -> {};

    private Main() {}

    public static void main(String[] args) {
        CommandLine commandLine = new CommandLine(commands(), Console.standard());
        System.exit(commandLine.run(List.of(args)).number());
    }

    /** Every command, in the order in which help lists them. */
    static List<Command> commands() {
        return List.of(new Serve(DEMO_SCHOOL, System.getenv()));
    }
}

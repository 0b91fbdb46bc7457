package org.manubrium;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.manubrium.cli.CheckCommand;
import org.manubrium.cli.Command;
import org.manubrium.cli.CommandLine;
import org.manubrium.cli.Console;
import org.manubrium.cli.ExamineCommand;
import org.manubrium.cli.MarkCommand;
import org.manubrium.cli.PlanCommand;
import org.manubrium.cli.ReasonCommand;
import org.manubrium.cli.VocabularyCommands;
import org.manubrium.school.DemoSchool;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Entry point: names the commands and hands over to the one that is called. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        CommandLine commandLine = new CommandLine(commands(), Console.standard());
        System.exit(commandLine.run(List.of(args)).number());
    }

    /** Every command, in the order in which help lists them. */
    static List<Command> commands() {
        List<Command> commands = new ArrayList<>();
        commands.add(new Serve(demoSchool(), System.getenv()));
        Supplier<Reference> reference = new Lazily<>(Tables::shipped);
        commands.add(new ExamineCommand(reference));
        commands.add(new MarkCommand(reference));
        commands.add(new CheckCommand(reference));
        commands.add(new ReasonCommand(reference));
        commands.add(new PlanCommand(reference));
        commands.addAll(VocabularyCommands.all(reference));
        return List.copyOf(commands);
    }

    /** What the demo holds besides its three people. */
    static DemoSchool demoSchool() {
        return new DemoRooms();
    }
}

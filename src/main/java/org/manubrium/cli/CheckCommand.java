package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.manubrium.casefile.Problem;
import org.manubrium.tables.Reference;

/** {@code check FILE...}: every problem of the case files. */
public final class CheckCommand implements Command {
    private final Supplier<Reference> reference;

    public CheckCommand(Supplier<Reference> reference) {
        this.reference = reference;
    }

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String help() {
        return "List every problem of case files, with path, line, rule and text";
    }

    @Override
    public String operands() {
        return "FILE...";
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        if (arguments.operands().isEmpty()) {
            throw new UsageException("check needs a FILE after it");
        }
        List<Problem> problems = new ArrayList<>();
        for (String file : arguments.operands()) {
            problems.addAll(CaseTexts.read(file, reference.get()).problems());
        }
        Json.print(console.out(), json(problems));
        return problems.isEmpty() ? ExitCode.DONE : ExitCode.PROBLEMS;
    }

    private static ArrayNode json(List<Problem> problems) {
        ArrayNode array = Json.array();
        problems.forEach(problem -> array.addObject()
                .put("path", problem.path())
                .put("line", problem.line())
                .put("rule", problem.rule())
                .put("text", problem.text()));
        return array;
    }
}

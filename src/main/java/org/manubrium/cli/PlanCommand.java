package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Supplier;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.reasoning.plan.Plan;
import org.manubrium.reasoning.plan.Planner;
import org.manubrium.reasoning.plan.Task;
import org.manubrium.reasoning.plan.Ways;
import org.manubrium.tables.PractisedTime;
import org.manubrium.tables.Reference;

/** {@code plan FILE [MANOEUVRE[:left|:right] ...]}: the order that takes the least time and moves the patient least. */
public final class PlanCommand implements Command {
    private static final String START = "lying-45";
    private static final Option ROUTINE =
            Option.onOff("routine", "Plan everything that belongs to every examination, each side and place once");

    private final Supplier<Reference> reference;

    public PlanCommand(Supplier<Reference> reference) {
        this.reference = reference;
    }

    @Override
    public String name() {
        return "plan";
    }

    @Override
    public String help() {
        return "Print the best order of the manoeuvres named, or of those on which the case turns, with its time";
    }

    @Override
    public String operands() {
        return "FILE [MANOEUVRE[:left|:right] ...]";
    }

    @Override
    public List<Option> options() {
        return List.of(ROUTINE);
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        Reference known = reference.get();
        List<Wanted> wanted = Wanted.after(arguments.operands(), known.examination());
        return CaseTexts.withCase(
                name(),
                arguments,
                known,
                console,
                file -> Json.print(console.out(), planned(known, file, wanted, arguments.has(ROUTINE))));
    }

    private static ObjectNode planned(Reference known, CaseFile file, List<Wanted> wanted, boolean routine) {
        List<Item> items =
                routine ? routine(known.examination()) : wanted.isEmpty() ? essential(known, file) : items(wanted);
        ObjectNode object = json(plan(known.examination(), items));
        if (routine) {
            PractisedTime practised = known.reasoning().practised();
            object.putObject("practised")
                    .put("leastSeconds", practised.least())
                    .put("mostSeconds", practised.most())
                    .put("source", new Vocabulary.Cited(known).citations(practised.source()))
                    .put("confidence", practised.confidence());
        }
        return object;
    }

    private static List<Item> routine(Examination examination) {
        return examination.manoeuvres().stream()
                .filter(m -> m.when().equals("always"))
                .flatMap(m -> looks(m).stream())
                .toList();
    }

    private static List<Item> essential(Reference known, CaseFile file) {
        return new CaseKeys(known)
                .of(file).essentials().stream()
                        .map(KeyLine::item)
                        .map(item -> look(
                                known.examination().manoeuvre(item.manoeuvre()).orElseThrow(), item))
                        .distinct()
                        .toList();
    }

    private static List<Item> items(List<Wanted> wanted) {
        return wanted.stream()
                .flatMap(w -> looks(w.manoeuvre()).stream().filter(w::holds))
                .distinct()
                .toList();
    }

    /** One item for each look: a look that shows all places at once is one. */
    private static List<Item> looks(Manoeuvre manoeuvre) {
        return Examination.items(manoeuvre).stream()
                .map(item -> look(manoeuvre, item))
                .distinct()
                .toList();
    }

    private static Item look(Manoeuvre manoeuvre, Item item) {
        return switch (manoeuvre.placeMode()) {
            case TOGETHER -> new Item(item.manoeuvre(), item.side(), "");
            case ONE, POINTS -> item;
        };
    }

    private static Plan plan(Examination examination, List<Item> items) {
        List<Task> tasks = items.stream()
                .map(item -> {
                    Manoeuvre manoeuvre =
                            examination.manoeuvre(item.manoeuvre()).orElseThrow();
                    return new Task(item.toString(), manoeuvre.positions(), manoeuvre.seconds());
                })
                .toList();
        return new Planner(new Ways(examination)).best(tasks, START);
    }

    private static ObjectNode json(Plan plan) {
        ObjectNode object = Json.object().put("seconds", plan.seconds()).put("changes", plan.changes());
        ArrayNode stops = object.putArray("stops");
        for (Plan.Stop stop : plan.stops()) {
            ArrayNode tasks = stops.addObject()
                    .put("position", stop.position())
                    .put(
                            "seconds",
                            stop.tasks().stream().mapToInt(Task::seconds).sum())
                    .putArray("manoeuvres");
            stop.tasks().forEach(task -> tasks.add(task.name()));
        }
        return object;
    }
}

package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import org.manubrium.cli.CaseEvidence.Step;
import org.manubrium.examination.Item;
import org.manubrium.reasoning.Advice;
import org.manubrium.reasoning.Advice.Promise;
import org.manubrium.reasoning.Belief;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.plan.Ways;
import org.manubrium.tables.Reference;

/** {@code reason FILE [STEP ...]}: what is thought of the differential after each step, and what would help most next. */
public final class ReasonCommand implements Command {
    private static final String START = "lying-45";

    private final Supplier<Reference> reference;

    public ReasonCommand(Supplier<Reference> reference) {
        this.reference = reference;
    }

    @Override
    public String name() {
        return "reason";
    }

    @Override
    public String help() {
        return "Print the chance of each diagnosis after each step of an examination, and the best next step";
    }

    @Override
    public String operands() {
        return "FILE [MANOEUVRE[:left|:right][@PLACE][=OUTCOME] ...]";
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        Reference known = reference.get();
        List<Step> steps = arguments.operands().stream()
                .skip(1)
                .map(word -> Step.read(word, known))
                .toList();
        return CaseTexts.withCase(
                name(),
                arguments,
                known,
                console,
                file -> Json.print(console.out(), new Telling(CaseEvidence.of(file, known), known).of(steps)));
    }

    /** Puts each step's belief into JSON. */
    private static final class Telling {
        private final Evidence evidence;
        private final Advice advice;
        private final PublishedRatios ratios;

        Telling(Evidence evidence, Reference known) {
            this.evidence = evidence;
            this.advice = new Advice(evidence, new Ways(known.examination()));
            this.ratios = new PublishedRatios(evidence, known);
        }

        ArrayNode of(List<Step> steps) {
            ArrayNode array = Json.array();
            Belief belief = evidence.start();
            Set<Integer> done = new HashSet<>();
            tell(array.addObject().put("step", "").put("seen", ""), belief, done);
            for (Step step : steps) {
                OptionalInt column = evidence.column(step.item());
                ObjectNode object = array.addObject().put("step", step.item().toString());
                if (column.isEmpty()) {
                    tell(object.put("seen", "tells nothing here"), belief, done);
                    continue;
                }
                Column told = evidence.columns().get(column.getAsInt());
                int seen = step.seen(told);
                object.put("seen", told.outcomes().get(seen));
                ratios.tell(object, belief, told, told.outcomes().get(seen));
                belief = belief.see(column.getAsInt(), seen);
                done.add(column.getAsInt());
                tell(object, belief, done);
            }
            return array;
        }

        private void tell(ObjectNode object, Belief belief, Set<Integer> done) {
            ArrayNode chances = object.putArray("posterior");
            double[] now = belief.chances();
            for (int h = 0; h < now.length; h++) {
                chances.addObject()
                        .put("diagnosis", evidence.possible().get(h).id())
                        .put("name", evidence.possible().get(h).name())
                        .put("chance", Json.rounded(now[h]));
            }
            object.put("bits", Json.rounded(belief.bits()));
            advice.byBits(belief, START, done).stream().findFirst().ifPresent(best -> promise(object, "next", best));
            advice.best(belief, START, done).ifPresent(best -> promise(object, "nextForItsTime", best));
        }

        private void promise(ObjectNode object, String name, Promise promise) {
            Item item = evidence.columns().get(promise.column()).item();
            object.putObject(name)
                    .put("manoeuvre", item.manoeuvre())
                    .put("side", item.side().word())
                    .put("place", item.place())
                    .put("bits", Json.rounded(promise.bits()))
                    .put("seconds", promise.seconds());
        }
    }
}

package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Supplier;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Body;
import org.manubrium.patient.Sign;
import org.manubrium.tables.Reference;

/** {@code examine FILE [MANOEUVRE[:left|:right] ...]}: the findings of the patient in a case file. */
public final class ExamineCommand implements Command {
    private final Supplier<Reference> reference;

    public ExamineCommand(Supplier<Reference> reference) {
        this.reference = reference;
    }

    @Override
    public String name() {
        return "examine";
    }

    @Override
    public String help() {
        return "Print the findings of the patient in a case file, all or those named";
    }

    @Override
    public String operands() {
        return "FILE [MANOEUVRE[:left|:right] ...]";
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
                file -> Json.print(console.out(), json(signs(known, file.body(known), wanted))));
    }

    private static List<Sign> signs(Reference known, Body body, List<Wanted> wanted) {
        return wanted.isEmpty()
                ? known.signs().examine(body)
                : wanted.stream()
                        .flatMap(w -> known.signs().examine(body, w.manoeuvre()).stream()
                                .filter(sign -> w.holds(sign.item())))
                        .toList();
    }

    private static ArrayNode json(List<Sign> signs) {
        ArrayNode array = Json.array();
        signs.forEach(sign -> {
            ObjectNode object = array.addObject()
                    .put("manoeuvre", sign.item().manoeuvre())
                    .put("side", sign.item().side().word())
                    .put("place", sign.item().place())
                    .put("position", sign.position());
            object.set("reading", json(sign.reading()));
            object.put("normal", sign.normal().orElse(null))
                    .put("meaning", sign.meaning().text());
        });
        return array;
    }

    private static ObjectNode json(Reading reading) {
        if (reading instanceof Reading.Grade grade) {
            return Json.object().put("grade", grade.grade()).put("scale", grade.scale());
        }
        if (reading instanceof Reading.Amount amount) {
            return Json.object().put("value", amount.value()).put("unit", amount.unit());
        }
        return Json.object().put("seen", ((Reading.Seen) reading).seen());
    }
}

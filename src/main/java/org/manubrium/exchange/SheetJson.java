package org.manubrium.exchange;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.MarkSheet.Line;

/** Mark sheets as JSON: per cents and credits to two and four decimals. */
public final class SheetJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private SheetJson() {}

    public static String write(MarkSheet sheet) {
        return tree(sheet).toString();
    }

    /** The sheet as a tree, for a command that prints it with other things. */
    public static ObjectNode tree(MarkSheet sheet) {
        ObjectNode node = JSON.createObjectNode();
        node.put("case", sheet.caseId());
        node.put("convention", sheet.convention());
        node.put("total", rounded(sheet.total(), 100));
        ObjectNode domains = node.putObject("domains");
        ObjectNode weights = node.putObject("weights");
        for (Domain domain : sheet.domains()) {
            domains.put(domain.name().word(), rounded(domain.percent(), 100));
            weights.put(domain.name().word(), domain.weight());
        }
        ArrayNode lines = node.putArray("lines");
        sheet.lines().forEach(line -> put(lines.addObject(), line));
        ArrayNode harms = node.putArray("harms");
        sheet.harms().forEach(harm -> put(harms.addObject(), harm));
        ArrayNode handling = node.putArray("handling");
        sheet.handling().forEach(handled -> put(handling.addObject(), handled));
        ArrayNode besides = node.putArray("besides");
        sheet.besides()
                .forEach(beside -> besides.addObject()
                        .put("name", beside.name())
                        .put("percent", rounded(beside.percent(), 100))
                        .put("weight", beside.weight()));
        sheet.notes().forEach(node.putArray("notes")::add);
        return node;
    }

    private static void put(ObjectNode node, Line line) {
        node.put("id", line.id());
        node.put("domain", line.domain().word());
        node.put("asked", line.asked());
        node.put("done", line.done());
        node.put("key", line.key());
        node.put("credit", rounded(line.credit(), 10_000));
        node.put("why", line.why());
        node.put("source", line.origin().source());
        node.put("confidence", line.origin().confidence());
        node.put("unverified", line.unverified());
        if (!line.scored()) {
            node.put("scored", false);
        }
        if (!line.standing().unchecked().isEmpty()) {
            ArrayNode rows = node.putArray("unchecked");
            line.standing()
                    .unchecked()
                    .forEach(origin -> rows.addObject()
                            .put("row", origin.row())
                            .put("source", origin.source())
                            .put("confidence", origin.confidence()));
        }
    }

    private static void put(ObjectNode node, Handled handled) {
        node.put("id", handled.id());
        node.put("text", handled.text());
        node.put("well", handled.well());
        node.put("why", handled.why());
        node.put("source", handled.origin().source());
        node.put("confidence", handled.origin().confidence());
    }

    private static void put(ObjectNode node, Harm harm) {
        node.put("id", harm.id());
        node.put("text", harm.text());
        node.put("source", harm.origin().source());
        node.put("confidence", harm.origin().confidence());
    }

    private static double rounded(double number, double parts) {
        return Math.round(number * parts) / parts;
    }
}

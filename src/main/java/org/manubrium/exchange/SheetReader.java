package org.manubrium.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Beside;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.Standing;
import org.manubrium.marking.key.Origin;

/** Reads mark sheets back as {@link SheetJson} wrote them. */
public final class SheetReader {
    private static final ObjectMapper JSON = new ObjectMapper();

    private SheetReader() {}

    /** @throws BadRecord when it is no mark sheet */
    public static MarkSheet read(String json) {
        try {
            return sheet(JSON.readTree(json));
        } catch (JsonProcessingException e) {
            throw new BadRecord("sheet", "a mark sheet", e.getOriginalMessage());
        }
    }

    private static MarkSheet sheet(JsonNode node) {
        List<Line> lines = new ArrayList<>();
        node.path("lines").forEach(line -> lines.add(line(line)));
        List<Harm> harms = new ArrayList<>();
        node.path("harms").forEach(harm -> harms.add(new Harm(text(harm, "id"), text(harm, "text"), origin(harm))));
        List<Handled> handling = new ArrayList<>();
        node.path("handling")
                .forEach(one -> handling.add(new Handled(
                        text(one, "id"),
                        text(one, "text"),
                        one.path("well").asBoolean(),
                        text(one, "why"),
                        origin(one))));
        List<Beside> besides = new ArrayList<>();
        node.path("besides")
                .forEach(one -> besides.add(new Beside(
                        text(one, "name"),
                        one.path("percent").asDouble(),
                        one.path("weight").asDouble())));
        List<String> notes = new ArrayList<>();
        node.path("notes").forEach(note -> notes.add(note.asText()));
        List<Domain> domains = Stream.of(DomainName.values())
                .map(name -> domain(node, name, lines))
                .toList();
        return new MarkSheet(
                text(node, "case"),
                text(node, "convention"),
                node.path("total").asDouble(),
                domains,
                harms,
                handling,
                besides,
                notes);
    }

    private static Domain domain(JsonNode node, DomainName name, List<Line> lines) {
        return new Domain(
                name,
                node.path("domains").path(name.word()).asDouble(),
                node.path("weights").path(name.word()).asDouble(),
                lines.stream().filter(line -> line.domain() == name).toList());
    }

    private static Line line(JsonNode node) {
        return new Line(
                text(node, "id"),
                domainName(text(node, "domain")),
                text(node, "asked"),
                text(node, "done"),
                text(node, "key"),
                node.path("credit").asDouble(),
                text(node, "why"),
                origin(node),
                standing(node));
    }

    /** A sheet from before lines could be left unscored says nothing of it: all of them score. */
    private static Standing standing(JsonNode node) {
        List<Origin> unchecked = new ArrayList<>();
        node.path("unchecked")
                .forEach(row ->
                        unchecked.add(new Origin(text(row, "source"), text(row, "confidence"), text(row, "row"))));
        return new Standing(unchecked, node.path("scored").asBoolean(true));
    }

    private static DomainName domainName(String word) {
        return Stream.of(DomainName.values())
                .filter(name -> name.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new BadRecord("domain", "one of the four domains", word));
    }

    private static Origin origin(JsonNode node) {
        return new Origin(text(node, "source"), text(node, "confidence"));
    }

    private static String text(JsonNode node, String name) {
        JsonNode found = node.path(name);
        if (!found.isTextual()) {
            throw new BadRecord(name, "text", found.isMissingNode() ? "nothing" : found.toString());
        }
        return found.textValue();
    }
}

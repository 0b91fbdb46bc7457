package org.manubrium.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.exchange.BadRecord;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.event.Logged.Keyed;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Reads an attempt written by hand, as JSON or YAML. What a program must spell out may be left out: a side of none, a place
 * where there is only one, the manoeuvre's own scale, the brackets around one answer, and moves of the patient, if none is
 * written at all.
 */
final class AttemptText {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LONGEST = 4_000_000;

    private final Examination examination;

    AttemptText(Examination examination) {
        this.examination = examination;
    }

    /**
     * The events as they would have been taken.
     *
     * @throws BadRecord when one of them cannot be read
     */
    List<Logged> read(String text) {
        JsonNode tree = tree(text);
        JsonNode list = tree.isObject() ? tree.path("events") : tree;
        list.forEach(this::complete);
        List<Keyed> events = EventJson.readAttempt(tree);
        String start = examination.positions().iterator().next().id();
        boolean moves = events.stream().anyMatch(e -> e.event() instanceof Event.Moved);
        return Logged.inOrder(moves ? events : moved(events, start), start);
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException notJson) {
            LoadSettings settings = LoadSettings.builder()
                    .setSchema(new FailsafeSchema())
                    .setMaxAliasesForCollections(0)
                    .setCodePointLimit(LONGEST)
                    .build();
            try {
                return JSON.valueToTree(new Load(settings).loadFromString(text));
            } catch (YamlEngineException e) {
                throw new BadRecord("attempt", "JSON or YAML", String.valueOf(e.getMessage()));
            }
        }
    }

    private void complete(JsonNode node) {
        if (!(node instanceof ObjectNode event)) {
            return;
        }
        if (event.path("side").asText("").isEmpty()) {
            event.remove("side");
        }
        Optional<Manoeuvre> manoeuvre = Optional.of(event.path("manoeuvre").asText(""))
                .filter(name -> !name.isEmpty())
                .map(name -> Wanted.manoeuvre(name, examination));
        manoeuvre.ifPresent(m -> event.put("manoeuvre", m.id()));
        if (event.path("answer").isValueNode()) {
            event.set("answer", JSON.createArrayNode().add(event.path("answer").asText()));
        }
        if (event.path("answer") instanceof ArrayNode answer) {
            for (int i = 0; i < answer.size(); i++) {
                answer.set(
                        i,
                        answer.get(i).isValueNode()
                                ? JSON.getNodeFactory().textNode(answer.get(i).asText())
                                : answer.get(i));
            }
        }
        if (event.path("reading") instanceof ObjectNode reading) {
            complete(
                    reading,
                    manoeuvre.map(Manoeuvre::scale).orElse(""),
                    manoeuvre.map(Manoeuvre::unit).orElse(""));
        }
    }

    private static void complete(ObjectNode reading, String scale, String unit) {
        if (reading.path("grade").isValueNode()) {
            reading.put("grade", reading.path("grade").asText());
            reading.put("scale", reading.path("scale").asText(scale));
        }
        String amount = reading.path("value").asText("");
        if (amount.matches("-?\\d{1,9}(\\.\\d{1,9})?")) {
            reading.put("value", Double.parseDouble(amount));
            reading.put("unit", reading.path("unit").asText(unit));
        }
    }

    /** The events with the patient moved to where each manoeuvre can be done. */
    private List<Keyed> moved(List<Keyed> events, String start) {
        List<Keyed> all = new ArrayList<>();
        String position = start;
        for (Keyed keyed : events) {
            if (keyed.event() instanceof Event.Probed probed) {
                List<String> positions = examination
                        .manoeuvre(probed.item().manoeuvre())
                        .map(Manoeuvre::positions)
                        .orElse(List.of(position));
                if (!positions.contains(position)) {
                    position = positions.get(0);
                    all.add(new Keyed("move before " + keyed.clientKey(), new Event.Moved(position)));
                }
            }
            all.add(keyed);
        }
        return all;
    }
}

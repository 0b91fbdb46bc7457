package org.manubrium.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged.Keyed;

/** Events as JSON: the same on the wire, in the store and in files of attempts. */
public final class EventJson {
    private static final int LONGEST_KEY = 64;
    private static final String TYPES = "one of moved, asked, probed, deferred, recorded, answered, handed-in";
    private static final Set<String> QUESTIONS =
            Set.of("normal", "roots", "site", "means", "differential", "next", "expect", "summary");

    private static final Map<String, Set<String>> FIELDS = Map.of(
            "moved", Set.of("key", "type", "position"),
            "asked", Set.of("key", "type", "question"),
            "probed", Set.of("key", "type", "manoeuvre", "side", "place", "technique"),
            "deferred", Set.of("key", "type", "manoeuvre", "side", "place", "reason"),
            "recorded", Set.of("key", "type", "manoeuvre", "side", "place", "reading"),
            "answered", Set.of("key", "type", "manoeuvre", "side", "place", "question", "answer"),
            "handed-in", Set.of("key", "type"));

    private static final ObjectMapper JSON = new ObjectMapper();

    private EventJson() {}

    /**
     * One event with its client key.
     *
     * @throws BadRecord when it is none, naming the field
     */
    public static Keyed read(String json) {
        return read(parse(json));
    }

    /** One event with its client key, from a node. */
    public static Keyed read(JsonNode node) {
        Fields fields = Fields.of("event", node);
        String key = fields.word("key");
        if (key.length() > LONGEST_KEY) {
            throw fields.bad("key", "at most " + LONGEST_KEY + " characters");
        }
        return new Keyed(key, event(fields));
    }

    /**
     * The events of an attempt file: a list of events, or an object with such a list as {@code events}. In a file the key
     * may be left out; then each event counts as a new one.
     */
    public static List<Keyed> readAttempt(JsonNode node) {
        JsonNode list = node.isObject() && node.path("events").isArray() ? node.path("events") : node;
        if (!list.isArray()) {
            throw new BadRecord(
                    "attempt", "a list of events", list.getNodeType().toString());
        }
        List<Keyed> events = new ArrayList<>();
        for (JsonNode one : list) {
            int at = events.size() + 1;
            try {
                events.add(one.hasNonNull("key") ? read(one) : new Keyed("line " + at, event(Fields.of("event", one))));
            } catch (BadRecord e) {
                throw new BadRecord("event " + at, e);
            }
        }
        return List.copyOf(events);
    }

    private static JsonNode parse(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new BadRecord(
                    "event",
                    "JSON",
                    "a fault at line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr());
        }
    }

    private static Event event(Fields fields) {
        String type = fields.text("type");
        Optional.ofNullable(FIELDS.get(type)).ifPresent(fields::only);
        return switch (type) {
            case "moved" -> new Event.Moved(fields.word("position"));
            case "asked" -> new Event.Asked(fields.word("question"));
            case "probed" -> new Event.Probed(item(fields, fields.word("manoeuvre")), fields.map("technique"));
            case "deferred" -> new Event.Deferred(item(fields, fields.word("manoeuvre")), fields.word("reason"));
            case "recorded" ->
                new Event.Recorded(item(fields, fields.word("manoeuvre")), reading(fields.object("reading")));
            case "answered" ->
                new Event.Answered(
                        item(fields, fields.text("manoeuvre", "")), question(fields), fields.texts("answer"));
            case "handed-in" -> new Event.HandedIn();
            default -> throw fields.bad("type", TYPES);
        };
    }

    private static String question(Fields fields) {
        String question = fields.word("question");
        if (!QUESTIONS.contains(question)) {
            throw fields.bad(
                    "question",
                    "one of " + String.join(", ", QUESTIONS.stream().sorted().toList()));
        }
        return question;
    }

    private static Item item(Fields fields, String manoeuvre) {
        Side side = Side.of(fields.text("side", Side.NONE.word()))
                .orElseThrow(() -> fields.bad("side", "right, left or none"));
        return new Item(manoeuvre, side, fields.text("place", ""));
    }

    private static Reading reading(Fields reading) {
        if (reading.has("grade")) {
            reading.only(Set.of("grade", "scale"));
            return new Reading.Grade(reading.word("grade"), reading.word("scale"));
        }
        if (reading.has("seen")) {
            reading.only(Set.of("seen"));
            return new Reading.Seen(reading.word("seen"));
        }
        reading.only(Set.of("value", "unit"));
        return new Reading.Amount(reading.number("value"), reading.text("unit"));
    }

    /** The event with its key, as {@link #read(String)} reads it. */
    public static String write(Keyed keyed) {
        return tree(keyed).toString();
    }

    /** The event with its key as a tree, for an answer that says more of it. */
    public static ObjectNode tree(Keyed keyed) {
        ObjectNode node = JSON.createObjectNode();
        node.put("key", keyed.clientKey());
        node.put("type", keyed.event().type());
        if (keyed.event() instanceof Event.Moved moved) {
            node.put("position", moved.position());
        } else if (keyed.event() instanceof Event.Asked asked) {
            node.put("question", asked.question());
        } else if (keyed.event() instanceof Event.Probed probed) {
            put(node, probed.item());
            ObjectNode technique = node.putObject("technique");
            new TreeMap<>(probed.technique()).forEach(technique::put);
        } else if (keyed.event() instanceof Event.Deferred deferred) {
            put(node, deferred.item());
            node.put("reason", deferred.reason());
        } else if (keyed.event() instanceof Event.Recorded recorded) {
            put(node, recorded.item());
            put(node.putObject("reading"), recorded.reading());
        } else if (keyed.event() instanceof Event.Answered answered) {
            put(node, answered.item());
            node.put("question", answered.question());
            answered.answer().forEach(node.putArray("answer")::add);
        }
        return node;
    }

    private static void put(ObjectNode node, Item item) {
        node.put("manoeuvre", item.manoeuvre());
        node.put("side", item.side().word());
        node.put("place", item.place());
    }

    private static void put(ObjectNode node, Reading reading) {
        if (reading instanceof Reading.Grade grade) {
            node.put("grade", grade.grade()).put("scale", grade.scale());
        } else if (reading instanceof Reading.Amount amount) {
            node.put("value", amount.value()).put("unit", amount.unit());
        } else if (reading instanceof Reading.Seen seen) {
            node.put("seen", seen.seen());
        }
    }
}

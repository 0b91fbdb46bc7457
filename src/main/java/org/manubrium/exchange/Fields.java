package org.manubrium.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The fields of one JSON object, read one by one, with bounds on everything. */
final class Fields {
    static final int LONGEST_TEXT = 2000;
    static final int LONGEST_LIST = 40;

    private final String path;
    private final JsonNode node;

    private Fields(String path, JsonNode node) {
        this.path = path;
        this.node = node;
    }

    /** @param what names the whole object in errors */
    static Fields of(String what, JsonNode node) {
        if (!node.isObject()) {
            throw new BadRecord(what, "an object", shown(node));
        }
        return new Fields("", node);
    }

    /** Refuses the first field that is none of these. */
    void only(Set<String> known) {
        Iterator<String> names = node.fieldNames();
        while (names.hasNext()) {
            String name = names.next();
            if (!known.contains(name)) {
                throw new BadRecord(
                        path + cut(name),
                        "no such field; the fields are "
                                + String.join(", ", known.stream().sorted().toList()),
                        "it");
            }
        }
    }

    boolean has(String name) {
        return node.hasNonNull(name);
    }

    BadRecord bad(String name, String expected) {
        return new BadRecord(path + name, expected, shown(node.path(name)));
    }

    String text(String name) {
        JsonNode found = node.path(name);
        if (!found.isTextual()) {
            throw bad(name, "text");
        }
        return bounded(name, found);
    }

    String text(String name, String ifMissing) {
        return has(name) ? text(name) : ifMissing;
    }

    /** Text that is not blank. */
    String word(String name) {
        String text = text(name);
        if (text.isBlank()) {
            throw bad(name, "text that is not blank");
        }
        return text;
    }

    private String bounded(String name, JsonNode text) {
        if (text.textValue().length() > LONGEST_TEXT) {
            throw new BadRecord(
                    path + name,
                    "at most " + LONGEST_TEXT + " characters",
                    text.textValue().length() + " characters");
        }
        return text.textValue();
    }

    double number(String name) {
        JsonNode found = node.path(name);
        if (!found.isNumber() || !Double.isFinite(found.doubleValue())) {
            throw bad(name, "a number");
        }
        return found.doubleValue();
    }

    Fields object(String name) {
        JsonNode found = node.path(name);
        if (!found.isObject()) {
            throw bad(name, "an object");
        }
        return new Fields(path + name + ".", found);
    }

    List<String> texts(String name) {
        JsonNode found = node.path(name);
        if (!found.isArray()) {
            throw bad(name, "a list of text");
        }
        sized(name, found);
        List<String> texts = new ArrayList<>();
        for (JsonNode one : found) {
            if (!one.isTextual()) {
                throw new BadRecord(path + name, "a list of text", "a list with " + shown(one));
            }
            texts.add(bounded(name, one));
        }
        return List.copyOf(texts);
    }

    /** An object of texts; empty if it is missing. */
    Map<String, String> map(String name) {
        Map<String, String> found = new LinkedHashMap<>();
        if (has(name)) {
            Fields inner = object(name);
            sized(name, inner.node);
            inner.node.fieldNames().forEachRemaining(key -> found.put(key, inner.text(key)));
        }
        return found;
    }

    private void sized(String name, JsonNode list) {
        if (list.size() > LONGEST_LIST) {
            throw new BadRecord(path + name, "at most " + LONGEST_LIST + " entries", list.size() + " entries");
        }
    }

    private static String shown(JsonNode node) {
        return node.isMissingNode() ? "nothing" : cut(node.toString());
    }

    private static String cut(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }
}

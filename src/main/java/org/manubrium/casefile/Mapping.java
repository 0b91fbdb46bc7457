package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A part of the file with named entries. What is asked of it and is not there as expected becomes a problem. */
final class Mapping {
    private final String name;
    private final int line;
    private final Map<String, Node> entries = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new LinkedHashMap<>();
    private final Problems problems;

    private Mapping(String name, MappingNode node, Problems problems) {
        this.name = name;
        this.line = Yaml.line(node.getStartMark());
        this.problems = problems;
        for (NodeTuple entry : node.getValue()) {
            put(entry.getKeyNode(), entry.getValueNode());
        }
    }

    private void put(Node keyNode, Node node) {
        int at = Yaml.line(keyNode.getStartMark());
        if (!(keyNode instanceof ScalarNode scalar)) {
            problems.add(at, "wrong-type", name + ": expected a word before the colon, found a list or mapping");
        } else if (entries.putIfAbsent(scalar.getValue(), node) != null) {
            problems.add(
                    at,
                    "duplicate-key",
                    name + ": \"" + scalar.getValue() + "\" stands here and on line " + lines.get(scalar.getValue()));
        } else {
            lines.put(scalar.getValue(), at);
        }
    }

    /** The node as a mapping with any entries. */
    static Optional<Mapping> open(Node node, String name, Problems problems) {
        if (node instanceof MappingNode mapping) {
            return Optional.of(new Mapping(name, mapping, problems));
        }
        problems.add(
                Yaml.line(node.getStartMark()),
                "wrong-type",
                name + ": expected entries such as \"key: text\", found " + kind(node));
        return Optional.empty();
    }

    /** The node as a mapping with no entries but the known ones. */
    static Optional<Mapping> of(Node node, String name, List<String> known, Problems problems) {
        Optional<Mapping> mapping = open(node, name, problems);
        mapping.ifPresent(m -> m.refuseOthers(known));
        return mapping;
    }

    private void refuseOthers(List<String> known) {
        lines.forEach((key, at) -> {
            if (!known.contains(key)) {
                problems.add(
                        at,
                        "unknown-key",
                        name + ": there is no \"" + key + "\" here" + Nearest.hint(key, known) + " (expected "
                                + String.join(", ", known) + ")");
            }
        });
    }

    int line() {
        return line;
    }

    /** The line on which an entry stands, or the mapping itself if it is not there. */
    int lineOf(String key) {
        return lines.getOrDefault(key, line);
    }

    private Optional<Node> entry(String key) {
        return Optional.ofNullable(entries.get(key)).filter(node -> !empty(node));
    }

    private static boolean empty(Node node) {
        return node instanceof ScalarNode scalar && scalar.getValue().isBlank();
    }

    private static String kind(Node node) {
        return switch (node.getNodeType()) {
            case SCALAR -> "\"" + ((ScalarNode) node).getValue() + "\"";
            case SEQUENCE -> "a list";
            case MAPPING -> "a mapping";
            case ANCHOR -> "an anchor";
        };
    }

    private void wrong(Node node, String what, String expected) {
        problems.add(
                Yaml.line(node.getStartMark()),
                "wrong-type",
                what + ": expected " + expected + ", found " + kind(node));
    }

    /** The text of an entry; none if it is missing, blank or not a text. */
    Optional<Text> text(String key) {
        return entry(key).flatMap(node -> scalar(node, name + "." + key));
    }

    private Optional<Text> scalar(Node node, String what) {
        if (node instanceof ScalarNode scalar) {
            return Optional.of(new Text(scalar.getValue(), Yaml.line(node.getStartMark())));
        }
        wrong(node, what, "a text");
        return Optional.empty();
    }

    /** The text of an entry that must be there; {@code expected} says what for. */
    Optional<Text> needed(String key, String expected) {
        if (entry(key).isEmpty()) {
            problems.add(lineOf(key), "missing", name + " lacks \"" + key + "\": expected " + expected);
        }
        return text(key);
    }

    /** A number within bounds; {@code fallback} if it is missing or wrong. */
    double number(String key, double least, double most, double fallback) {
        Optional<Text> text = text(key);
        if (text.isEmpty()) {
            return fallback;
        }
        double number = parsed(text.get().words());
        if (number >= least && number <= most) {
            return number;
        }
        problems.add(
                text.get().line(),
                Double.isNaN(number) ? "wrong-type" : "out-of-range",
                name + "." + key + ": expected a number from " + plain(least) + " to " + plain(most) + ", found \""
                        + text.get().words() + "\"");
        return fallback;
    }

    /** A whole number within bounds, or nothing. */
    Optional<Long> whole(String key, long least, long most) {
        Optional<Text> text = text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String words = text.get().words();
        boolean digits = words.matches("-?\\d{1,18}");
        if (digits && Long.parseLong(words) >= least && Long.parseLong(words) <= most) {
            return Optional.of(Long.parseLong(words));
        }
        problems.add(
                text.get().line(),
                digits ? "out-of-range" : "wrong-type",
                name + "." + key + ": expected a whole number from " + least + " to " + most + ", found \"" + words
                        + "\"");
        return Optional.empty();
    }

    /** A plain decimal number; NaN for anything else. */
    static double parsed(String words) {
        return words.matches("[-+]?\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(words) : Double.NaN;
    }

    static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    /** An entry that is itself a mapping. */
    Optional<Mapping> mapping(String key, List<String> known) {
        return entry(key).flatMap(node -> of(node, key, known, problems));
    }

    /** The entries of a list of mappings. */
    List<Mapping> mappings(String key, List<String> known) {
        List<Mapping> found = new ArrayList<>();
        for (Node node : list(key)) {
            of(node, key, known, problems).ifPresent(found::add);
        }
        return found;
    }

    /** The texts of a list. */
    List<Text> texts(String key) {
        List<Text> found = new ArrayList<>();
        for (Node node : list(key)) {
            scalar(node, key).ifPresent(found::add);
        }
        return found;
    }

    /** The texts of an open mapping, by their keys with the keys' lines. */
    Map<Text, Text> pairs(String key) {
        Map<Text, Text> found = new LinkedHashMap<>();
        entry(key)
                .flatMap(node -> open(node, key, problems))
                .ifPresent(open -> open.lines.forEach((word, at) ->
                        open.needed(word, "a text").ifPresent(text -> found.put(new Text(word, at), text))));
        return found;
    }

    private List<Node> list(String key) {
        Optional<Node> node = entry(key);
        if (node.isPresent() && !(node.get() instanceof SequenceNode)) {
            wrong(node.get(), key, "a list, each entry after a dash");
        }
        return node.filter(SequenceNode.class::isInstance)
                .map(n -> ((SequenceNode) n).getValue())
                .orElse(List.of());
    }
}

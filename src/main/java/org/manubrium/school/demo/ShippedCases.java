package org.manubrium.school.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The cases that come with the programme. */
public final class ShippedCases {
    private static final List<String> NAMES = List.of(
            "florist",
            "proofreader",
            "rower",
            "seamstress",
            "stonemason",
            "calligrapher",
            "bellringer",
            "usher",
            "clockmaker",
            "stoker",
            "thatcher",
            "lacemaker",
            "maltster",
            "schoolmistress",
            "coachman",
            "drayman",
            "ropemaker",
            "baker",
            "glover",
            "verger",
            "quarryman",
            "cook",
            "laundress",
            "cellist",
            "signalman",
            "ropedancer",
            "librarian",
            "cartographer",
            "joiner",
            "gardener",
            "organist",
            "postmistress",
            "ferryman",
            "miller",
            "apprentice");

    /** Those that the demo opens with: the first has been sat, the others are for whoever comes in. */
    private static final List<String> AT_THE_DOOR = List.of("apprentice", "florist", "joiner");

    /** Those that come while the first visitor looks round. Together there are one or two of each system. */
    private static final List<String> SOON = List.of(
            "miller",
            "ferryman",
            "postmistress",
            "organist",
            "gardener",
            "cellist",
            "lacemaker",
            "stoker",
            "usher",
            "stonemason");

    private static final Pattern TITLE = Pattern.compile("(?m)^title: *(.+)$");
    private static final Pattern DIFFICULTY = Pattern.compile("(?m)^difficulty: *(.+)$");

    private ShippedCases() {}

    /** What is known of one without reading it as a case. */
    public record Shipped(String name, String title, String difficulty) {}

    /** All of them, in their order. */
    public static List<Shipped> all() {
        return NAMES.stream()
                .map(name -> new Shipped(name, first(TITLE, text(name)), first(DIFFICULTY, text(name))))
                .toList();
    }

    private static String first(Pattern line, String text) {
        Matcher found = line.matcher(text);
        return found.find() ? found.group(1).strip() : "";
    }

    /** Their names, which are their slugs. */
    public static List<String> names() {
        return NAMES;
    }

    /** The names of those that the demo school has in use when it opens. */
    static List<String> atTheDoor() {
        return AT_THE_DOOR;
    }

    /** The names of those that it puts in use soon after. */
    static List<String> soon() {
        return SOON;
    }

    /** The names of all that the demo school has in use; the others can be begun from on the case desk. */
    public static List<String> inTheDemo() {
        return Stream.concat(AT_THE_DOOR.stream(), SOON.stream()).toList();
    }

    /** The text of one. */
    public static String text(String name) {
        try (InputStream file = ShippedCases.class.getClassLoader().getResourceAsStream("cases/" + name + ".yaml")) {
            if (file == null) {
                throw new IllegalArgumentException("no case called " + name + " comes with the programme");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

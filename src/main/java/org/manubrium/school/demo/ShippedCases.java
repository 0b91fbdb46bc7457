package org.manubrium.school.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

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
            "coachman",
            "drayman",
            "ropemaker",
            "baker",
            "glover",
            "verger",
            "quarryman",
            "cook",
            "cellist",
            "signalman",
            "librarian",
            "cartographer",
            "joiner",
            "gardener",
            "organist",
            "postmistress",
            "ferryman",
            "miller",
            "apprentice");

    private ShippedCases() {}

    /** Their names, which are their slugs. */
    public static List<String> names() {
        return NAMES;
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

package org.manubrium.marking.key;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A damaged place and what lies near it.
 *
 * @param place the true place as a clinician says it; blank if there is none
 * @param near every way to name a place on the right side within two steps of it
 * @param pathway the sites of the pathway from the stimulus on, for the drawing
 */
public record SiteKey(String place, List<Near> near, List<String> pathway) {
    public static final SiteKey NONE = new SiteKey("", List.of(), List.of());

    public SiteKey {
        near = List.copyOf(near);
        pathway = List.copyOf(pathway);
    }

    /** A place by its words in sorted order, and its distance in steps along the pathway. */
    public record Near(String words, int steps) {}

    /** The steps from the truth to a place said in any order of words; empty if it lies further off or on the wrong side. */
    public OptionalInt steps(String said) {
        String words = words(said);
        return near.stream()
                .filter(n -> n.words().equals(words))
                .mapToInt(Near::steps)
                .min();
    }

    /** The same, with more names of the true place. */
    public SiteKey accepting(List<String> places) {
        List<Near> more = Stream.concat(near.stream(), places.stream().map(said -> new Near(words(said), 0)))
                .distinct()
                .toList();
        return new SiteKey(place, more, pathway);
    }

    /** The words of a place in sorted order, without "at", "in" and "the". */
    public static String words(String said) {
        return Arrays.stream(said.trim().toLowerCase(Locale.ROOT).split("\\s+", -1))
                .filter(word -> !word.equals("at") && !word.equals("in") && !word.equals("the"))
                .sorted()
                .collect(Collectors.joining(" "));
    }
}

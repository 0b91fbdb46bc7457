package org.manubrium.marking.credit;

import java.util.List;
import java.util.OptionalInt;

/** A diagnosis that was named, with a confidence in percent if one was given. */
public record Guess(String diagnosis, OptionalInt confidence) {

    /** Reads "id" or "id=70"; a confidence that is no whole number from 0 to 100 counts as none given. */
    public static Guess parse(String text) {
        int cut = text.lastIndexOf('=');
        if (cut < 0) {
            return new Guess(text, OptionalInt.empty());
        }
        String number = text.substring(cut + 1);
        boolean percent = number.matches("\\d{1,2}|100");
        return new Guess(
                text.substring(0, cut), percent ? OptionalInt.of(Integer.parseInt(number)) : OptionalInt.empty());
    }

    public static List<Guess> parse(List<String> texts) {
        return texts.stream().map(Guess::parse).toList();
    }

    boolean atLeastAsSureAs(Guess other) {
        return confidence.orElse(0) >= other.confidence.orElse(0);
    }
}

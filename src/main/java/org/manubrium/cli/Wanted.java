package org.manubrium.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.casefile.Nearest;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;

/** A manoeuvre asked for on the command line, by id or name, on one side or on each. */
record Wanted(Manoeuvre manoeuvre, Optional<Side> side) {

    /** Those that are named after the file. */
    static List<Wanted> after(List<String> operands, Examination examination) {
        return operands.stream().skip(1).map(word -> read(word, examination)).toList();
    }

    /** Reads {@code triceps-reflex:left} or {@code "triceps reflex"}. */
    static Wanted read(String word, Examination examination) {
        int colon = word.lastIndexOf(':');
        String name = colon < 0 ? word : word.substring(0, colon);
        Manoeuvre manoeuvre = manoeuvre(name, examination);
        return new Wanted(
                manoeuvre,
                colon < 0 ? Optional.empty() : Optional.of(side(word, word.substring(colon + 1), manoeuvre)));
    }

    boolean holds(Item item) {
        return side.map(s -> s == item.side()).orElse(true);
    }

    /** A manoeuvre by id or name. */
    static Manoeuvre manoeuvre(String name, Examination examination) {
        String wanted = name.trim().toLowerCase(Locale.ROOT);
        return examination.manoeuvres().stream()
                .filter(m -> m.id().equals(wanted)
                        || m.name().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new UsageException("no manoeuvre is called \"" + name + "\""
                        + Nearest.hint(wanted, names(examination)) + " (the command \"manoeuvres\" lists them)"));
    }

    private static List<String> names(Examination examination) {
        return examination.manoeuvres().stream()
                .flatMap(m -> Stream.of(m.id(), m.name()))
                .toList();
    }

    private static Side side(String word, String said, Manoeuvre manoeuvre) {
        return Side.of(said)
                .filter(side -> manoeuvre.sided() == (side != Side.NONE))
                .orElseThrow(() -> new UsageException("\"" + word + "\": expected "
                        + (manoeuvre.sided() ? "right or left" : "no side") + " after the colon, found \"" + said
                        + "\""));
    }
}

package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.tables.Reference;

/** Reads what the author expects manoeuvres to show. */
final class ExpectedReader {
    static final List<String> KEYS = List.of("manoeuvre", "side", "place", "reading");

    private final Reference reference;
    private final ManoeuvreReader manoeuvres;
    private final Problems problems;

    ExpectedReader(Reference reference, Problems problems) {
        this.reference = reference;
        this.manoeuvres = new ManoeuvreReader(reference, problems);
        this.problems = problems;
    }

    List<Placed<Expected>> read(Mapping file) {
        List<Placed<Expected>> found = new ArrayList<>();
        for (Mapping entry : file.mappings("expected", KEYS)) {
            manoeuvres.manoeuvre(entry).ifPresent(manoeuvre -> found.addAll(read(entry, manoeuvre)));
        }
        return found;
    }

    private List<Placed<Expected>> read(Mapping entry, Manoeuvre manoeuvre) {
        int before = problems.count();
        Optional<String> place = manoeuvres.place(entry, manoeuvre);
        if (place.isEmpty() && !manoeuvre.places().isEmpty()) {
            problems.add(
                    entry.line(),
                    "unknown-place",
                    manoeuvre.id() + " is done at a place: expected one of "
                            + String.join(
                                    ", ",
                                    manoeuvre.places().stream().map(p -> p.id()).toList()));
        }
        List<Side> sides = sides(entry, manoeuvre);
        Optional<Text> reading = entry.needed("reading", "what it shows: " + String.join(", ", readings(manoeuvre)));
        reading.ifPresent(text -> check(text, manoeuvre));
        return problems.count() > before
                ? List.of()
                : sides.stream()
                        .map(side -> new Item(manoeuvre.id(), side, place.orElse("")))
                        .map(item -> new Expected(item, reading.orElseThrow().words()))
                        .map(expected -> new Placed<>(expected, entry.line()))
                        .toList();
    }

    private List<Side> sides(Mapping entry, Manoeuvre manoeuvre) {
        Optional<Text> text = entry.text("side");
        String word = text.map(t -> t.words().trim().toLowerCase(Locale.ROOT)).orElse("none");
        if (manoeuvre.sided() && word.equals("both")) {
            return List.of(Side.RIGHT, Side.LEFT);
        }
        Optional<Side> side = Side.of(word).filter(s -> manoeuvre.sided() == (s != Side.NONE));
        if (side.isEmpty()) {
            problems.add(
                    entry.lineOf("side"),
                    "side",
                    manoeuvre.id() + (manoeuvre.sided() ? " is done on a side" : " takes no side") + ": expected "
                            + (manoeuvre.sided() ? "right, left or both" : "none")
                            + text.map(t -> ", found \"" + t.words() + "\"").orElse(""));
        }
        return side.map(List::of).orElse(List.of());
    }

    private void check(Text reading, Manoeuvre manoeuvre) {
        boolean number = manoeuvre.scale().isBlank() && !Double.isNaN(Mapping.parsed(reading.words()));
        if (!number && !readings(manoeuvre).contains(reading.words())) {
            problems.add(
                    reading.line(),
                    "unknown-reading",
                    manoeuvre.id() + " is never read as \"" + reading.words() + "\""
                            + Nearest.hint(reading.words(), readings(manoeuvre)) + " (expected one of "
                            + String.join(", ", readings(manoeuvre)) + ")");
        }
    }

    private List<String> readings(Manoeuvre manoeuvre) {
        Stream<String> own = manoeuvre.scale().isBlank()
                ? Stream.of("a number")
                : reference.examination().scale(manoeuvre.scale()).levels().stream()
                        .map(Level::code);
        return Stream.concat(own, Stream.of(Expected.NORMAL, Expected.ABNORMAL))
                .distinct()
                .toList();
    }
}

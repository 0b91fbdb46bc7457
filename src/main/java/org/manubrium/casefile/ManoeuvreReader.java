package org.manubrium.casefile;

import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.tables.Reference;

/** Reads the manoeuvre, and the place of it, that an entry names. */
final class ManoeuvreReader {
    private final Reference reference;
    private final Problems problems;

    ManoeuvreReader(Reference reference, Problems problems) {
        this.reference = reference;
        this.problems = problems;
    }

    Optional<Manoeuvre> manoeuvre(Mapping entry) {
        return entry.needed("manoeuvre", "a manoeuvre's id").flatMap(this::manoeuvre);
    }

    private Optional<Manoeuvre> manoeuvre(Text text) {
        Optional<Manoeuvre> found = reference.examination().manoeuvre(text.words());
        if (found.isEmpty()) {
            List<String> ids = reference.examination().manoeuvres().stream()
                    .map(Manoeuvre::id)
                    .toList();
            problems.add(
                    text.line(),
                    "unknown-manoeuvre",
                    "no manoeuvre is called \"" + text.words() + "\"" + Nearest.hint(text.words(), ids)
                            + " (the command \"manoeuvres\" lists them)");
        }
        return found;
    }

    Optional<String> place(Mapping entry, Manoeuvre manoeuvre) {
        Optional<Text> text = entry.text("place");
        List<String> ids = manoeuvre.places().stream().map(Place::id).toList();
        if (text.isPresent() && !ids.contains(text.get().words())) {
            problems.add(
                    text.get().line(),
                    "unknown-place",
                    manoeuvre.id() + " has no place \"" + text.get().words() + "\""
                            + Nearest.hint(text.get().words(), ids)
                            + (ids.isEmpty() ? " (it has only one)" : ""));
        }
        return text.map(Text::words);
    }
}

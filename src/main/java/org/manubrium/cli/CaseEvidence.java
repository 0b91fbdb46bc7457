package org.manubrium.cli;

import java.util.Locale;
import java.util.Optional;
import org.manubrium.anatomy.Side;
import org.manubrium.casefile.CaseFile;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.weigh.Weigher;
import org.manubrium.tables.Reference;

/** The evidence of a case file, and the steps that are named on the command line. */
final class CaseEvidence {
    private CaseEvidence() {}

    static Evidence of(CaseFile file, Reference known) {
        return new Evidence(
                new Weigher(known.signs(), known.conditions(), known.reasoning().grounds())
                        .weigh(file.truth(known).differential()));
    }

    /**
     * A step as it was named.
     *
     * @param outcome what it showed, if that was said
     */
    record Step(Item item, Optional<String> outcome) {
        /** Reads {@code pin:left@c7-middle-finger=1}; side, place and outcome may be left out. */
        static Step read(String word, Reference known) {
            int equals = word.indexOf('=');
            String named = equals < 0 ? word : word.substring(0, equals);
            int at = named.indexOf('@');
            Wanted wanted = Wanted.read(at < 0 ? named : named.substring(0, at), known.examination());
            Manoeuvre manoeuvre = wanted.manoeuvre();
            Side side = wanted.side().orElseGet(() -> sideOf(manoeuvre, word));
            String place = at < 0 ? "" : place(manoeuvre, named.substring(at + 1), word);
            return new Step(
                    new Item(manoeuvre.id(), side, place),
                    equals < 0 ? Optional.empty() : Optional.of(word.substring(equals + 1)));
        }

        private static Side sideOf(Manoeuvre manoeuvre, String word) {
            if (manoeuvre.sided()) {
                throw new UsageException("\"" + word + "\": expected :right or :left after the manoeuvre");
            }
            return Side.NONE;
        }

        private static String place(Manoeuvre manoeuvre, String said, String word) {
            return manoeuvre.places().stream()
                    .map(Place::id)
                    .filter(id -> id.equals(said))
                    .findFirst()
                    .orElseThrow(() -> new UsageException("\"" + word + "\": expected a place after the @, one of "
                            + manoeuvre.places().stream().map(Place::id).toList()));
        }

        /** The place of what was seen among the step's outcomes: what was said, or what the patient shows. */
        int seen(Column column) {
            if (outcome.isEmpty()) {
                return column.found();
            }
            String said = outcome.get().toLowerCase(Locale.ROOT);
            int index = column.outcomes().indexOf(said);
            if (index < 0) {
                throw new UsageException(
                        item + ": expected one of " + column.outcomes() + " after the =, found \"" + said + "\"");
            }
            return index;
        }
    }
}

package org.manubrium.learning.question;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.Reading;
import org.manubrium.examination.ReadingKind;
import org.manubrium.examination.Scale;
import org.manubrium.marking.key.Origin;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;

/** How findings and their sources are written in an explanation. */
final class Written {
    private static final String MEMORY = "from-memory";

    private final Invented invented;

    Written(Invented invented) {
        this.invented = invented;
    }

    /** "right 2, left 0 (reflexes, 0 to 4)" as a manoeuvre reads at these items. */
    String readings(Body body, Manoeuvre manoeuvre, List<Item> items) {
        String all = items.stream()
                .map(item -> named(manoeuvre, item) + reading(body, manoeuvre, item))
                .collect(Collectors.joining(", "));
        return manoeuvre.name() + " " + all;
    }

    private String reading(Body body, Manoeuvre manoeuvre, Item item) {
        Finding finding = invented.finding(body, manoeuvre, item);
        if (finding instanceof Finding.Measured measured) {
            return plain(measured.value()) + " " + measured.unit();
        }
        Scale scale = invented.examination().scale(manoeuvre.scale());
        Reading reading = invented.reading(manoeuvre.scale(), finding);
        String code = reading instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) reading).seen();
        return scale.rank(code) < 0 ? code : level(manoeuvre, scale.levels().get(scale.rank(code)));
    }

    private static String plain(double number) {
        return number == Math.rint(number)
                ? String.valueOf(Math.round(number))
                : String.format(Locale.ROOT, "%.1f", number);
    }

    private static String level(Manoeuvre manoeuvre, Level level) {
        boolean word = manoeuvre.kind() != ReadingKind.GRADED && !level.label().isBlank();
        return word ? level.label() : level.code();
    }

    private static String named(Manoeuvre manoeuvre, Item item) {
        Stream<String> side = Stream.of(item.side()).filter(s -> s != Side.NONE).map(Side::word);
        Stream<String> place = manoeuvre.places().stream()
                .filter(p -> p.id().equals(item.place()))
                .map(Place::name);
        return Stream.concat(side, place).map(word -> word + " ").collect(Collectors.joining());
    }

    /** What rests on a condition and on manoeuvres is as sure as the least sure of them. */
    static Origin origin(Condition condition, List<Manoeuvre> manoeuvres) {
        String sources = Stream.concat(
                        Stream.of(condition.source()), manoeuvres.stream().map(Manoeuvre::source))
                .flatMap(ids -> Stream.of(ids.split(";", -1)))
                .distinct()
                .collect(Collectors.joining(";"));
        boolean memory = condition.confidence().equals(MEMORY)
                || manoeuvres.stream().anyMatch(m -> m.confidence().equals(MEMORY));
        return new Origin(sources, memory ? MEMORY : condition.confidence());
    }
}

package org.manubrium.casefile;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Body;
import org.manubrium.patient.Sign;
import org.manubrium.patient.sign.Signs;
import org.manubrium.tables.Reference;

/** Compares what an author expects with what the body of the case gives. */
final class ExpectedCheck {
    private final Reference reference;
    private final Problems problems;
    private final Body body;

    ExpectedCheck(Reference reference, Problems problems, Body body) {
        this.reference = reference;
        this.problems = problems;
        this.body = body;
    }

    void run(List<Placed<Expected>> all) {
        all.forEach(one -> check(one.thing(), one.line()));
    }

    private void check(Expected expected, int line) {
        Item item = expected.item();
        Manoeuvre manoeuvre =
                reference.examination().manoeuvre(item.manoeuvre()).orElseThrow();
        Sign sign = reference.signs().sign(body, Signs.usual(manoeuvre, item));
        if (agrees(expected.reading(), manoeuvre, sign)) {
            return;
        }
        boolean normal = sign.normal().orElse(true);
        String why = normal
                ? ", as nothing that ails this patient changes it"
                : ", explained by " + String.join("; ", sign.meaning().ailments());
        problems.add(
                line,
                "unexplained",
                "expected: no lesion of this case explains \"" + expected.reading() + "\" for " + label(manoeuvre, item)
                        + ": expected \"" + read(sign.reading()) + "\"" + why);
    }

    private static boolean agrees(String reading, Manoeuvre manoeuvre, Sign sign) {
        if (sign.reading() instanceof Reading.Amount amount) {
            double number = Mapping.parsed(reading);
            if (!Double.isNaN(number)) {
                return Math.abs(number - amount.value()) <= manoeuvre.tolerance();
            }
        }
        boolean normal = sign.normal().orElse(true);
        return reading.equals(read(sign.reading()))
                || (reading.equals(Expected.NORMAL) && normal)
                || (reading.equals(Expected.ABNORMAL) && !normal);
    }

    private static String read(Reading reading) {
        if (reading instanceof Reading.Amount amount) {
            return Mapping.plain(Math.rint(amount.value() * 10) / 10) + " " + amount.unit();
        }
        return reading instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) reading).seen();
    }

    private static String label(Manoeuvre manoeuvre, Item item) {
        Stream<String> place = manoeuvre.places().stream()
                .filter(p -> p.id().equals(item.place()))
                .map(Place::name);
        Stream<String> side = Stream.of(item.side()).filter(s -> s != Side.NONE).map(Side::word);
        return Stream.of(Stream.of(manoeuvre.name()), place, side)
                .flatMap(parts -> parts)
                .collect(Collectors.joining(", "));
    }
}

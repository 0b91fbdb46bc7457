package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.ReadingKind;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;

/** What healthy people who are alike but for their natural variation show. Safe for several threads. */
final class HealthyPeople {
    private static final int MANY = 24;

    private final Signs signs;
    private final Body like;
    private final Map<Item, List<Finding>> shown = new ConcurrentHashMap<>();

    /** @param body anybody of their age, sex, build and skin */
    HealthyPeople(Signs signs, Body body) {
        this.signs = signs;
        this.like = body.with(List.of());
        for (int seed = 0; seed < MANY; seed++) {
            Body one = varied(seed);
            signs.examination().manoeuvres().stream()
                    .filter(manoeuvre -> manoeuvre.kind() != ReadingKind.MEASURED)
                    .forEach(manoeuvre -> look(one, manoeuvre));
        }
    }

    private Body varied(long seed) {
        return new Body(like.anatomy(), like.physiology(), like.person().varied(Variation.of(seed)), List.of());
    }

    private void look(Body body, Manoeuvre manoeuvre) {
        for (Item item : Examination.items(manoeuvre)) {
            List<Finding> before = shown.computeIfAbsent(item, i -> new ArrayList<>(1));
            Finding finding = signs.finding(body, Signs.usual(manoeuvre, item));
            if (!before.contains(finding)) {
                before.add(finding);
            }
        }
    }

    /**
     * The different findings among a fixed number of them, in the order of the people who first show each. What they measure
     * is hardly ever asked for, and not looked at before it is.
     */
    List<Finding> shown(Manoeuvre manoeuvre, Item item) {
        return shown.computeIfAbsent(
                item,
                asked -> LongStream.range(0, MANY)
                        .mapToObj(seed -> signs.finding(varied(seed), Signs.usual(manoeuvre, asked)))
                        .distinct()
                        .toList());
    }
}

package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;

/** What healthy people who are alike but for their natural variation show. */
final class HealthyPeople {
    private static final int MANY = 24;

    private final Map<Item, List<Finding>> shown = new HashMap<>();

    /** @param body anybody of their age, sex, build and skin */
    HealthyPeople(Signs signs, Body body) {
        for (long seed = 0; seed < MANY; seed++) {
            Body one = new Body(body.anatomy(), body.physiology(), body.person().varied(Variation.of(seed)), List.of());
            signs.examination().manoeuvres().forEach(manoeuvre -> look(signs, one, manoeuvre));
        }
    }

    private void look(Signs signs, Body body, Manoeuvre manoeuvre) {
        for (Item item : Examination.items(manoeuvre)) {
            List<Finding> before = shown.computeIfAbsent(item, i -> new ArrayList<>(1));
            Finding finding = signs.finding(body, Signs.usual(manoeuvre, item));
            if (!before.contains(finding)) {
                before.add(finding);
            }
        }
    }

    /** The different findings among a fixed number of them, in the order of the people who first show each. */
    List<Finding> shown(Item item) {
        return shown.getOrDefault(item, List.of());
    }
}

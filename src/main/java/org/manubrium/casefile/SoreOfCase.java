package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.key.Soreness;
import org.manubrium.patient.Body;
import org.manubrium.patient.sign.Signs;

/**
 * Where one patient is sore: found by what the patient says under the hand, not by a list of places. Manoeuvres that read the
 * same thing in the same way, as at the sides of the belly and in its middle, are one.
 */
final class SoreOfCase {
    private static final String PAIN = "pain";

    private final Signs signs;
    private final Set<String> hurting;

    /** @param hurting what patients say when it hurts */
    SoreOfCase(Signs signs, Set<String> hurting) {
        this.signs = signs;
        this.hurting = Set.copyOf(hurting);
    }

    List<Soreness> of(Body body) {
        Map<String, List<Manoeuvre>> ways = new LinkedHashMap<>();
        signs.examination().manoeuvres().stream()
                .filter(manoeuvre -> manoeuvre.cautions().contains(PAIN))
                .forEach(manoeuvre -> ways.computeIfAbsent(manoeuvre.reads(), reads -> new ArrayList<>())
                        .add(manoeuvre));
        return ways.values().stream()
                .map(way -> soreness(way, body, body.healthy()))
                .filter(found -> !found.sore().isEmpty())
                .toList();
    }

    private Soreness soreness(List<Manoeuvre> way, Body body, Body healthy) {
        List<Item> sore = new ArrayList<>();
        for (Manoeuvre manoeuvre : way) {
            Examination.items(manoeuvre).stream()
                    .filter(item -> hurts(body, manoeuvre, item) && !hurts(healthy, manoeuvre, item))
                    .forEach(sore::add);
        }
        return new Soreness(way.get(0).name(), way.stream().map(Manoeuvre::id).toList(), sore);
    }

    private boolean hurts(Body body, Manoeuvre manoeuvre, Item item) {
        return hurting.contains(signs.show(body, Signs.usual(manoeuvre, item)).words());
    }
}

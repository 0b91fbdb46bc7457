package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Quantity;
import org.manubrium.tables.Reference;

/** Builds bodies from what a case says. */
final class Bodies {
    private Bodies() {}

    /** A body whose quantities stand exactly at the amounts given, whatever else moves them. */
    static Body of(Reference reference, Person person, List<Ailment> ailments, Map<String, Double> quantities) {
        List<Ailment> all = new ArrayList<>(ailments);
        quantities.forEach((id, amount) -> all.add(shift(reference, person, ailments, id, amount)));
        return new Body(reference.anatomy(), reference.physiology(), person, all);
    }

    private static Ailment shift(Reference reference, Person person, List<Ailment> ailments, String id, double amount) {
        Quantity quantity = reference.physiology().quantity(id);
        double others = ailments.stream()
                .mapToDouble(a -> a.shifts().getOrDefault(id, 0.0))
                .sum();
        double without =
                quantity.normal() + quantity.spread() * person.variation().of(id) + others;
        String name = quantity.name() + " " + Mapping.plain(amount) + " " + quantity.unit();
        return new Ailment(name, false, List.of(), Map.of(id, amount - without));
    }
}

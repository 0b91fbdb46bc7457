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
        Body without = new Body(reference.anatomy(), reference.physiology(), person, ailments);
        List<Ailment> all = new ArrayList<>(ailments);
        quantities.forEach((id, amount) -> all.add(shift(without, id, amount)));
        return without.with(all);
    }

    private static Ailment shift(Body without, String id, double amount) {
        Quantity quantity = without.physiology().quantity(id);
        String name = quantity.name() + " " + Mapping.plain(amount) + " " + quantity.unit();
        return new Ailment(name, false, List.of(), Map.of(id, amount - without.unbounded(id)));
    }
}

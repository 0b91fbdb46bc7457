package org.manubrium.reasoning.weigh;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.sign.Signs;
import org.manubrium.patient.sign.Strand;

/** Names signs: what is read in the same way off the same pathways and quantities is one sign. */
final class Signature {
    private final Signs signs;
    private final Body body;
    private final Map<Object, String> known = new HashMap<>();

    /** @param body any body of the patient: pathways are the same in all */
    Signature(Signs signs, Body body) {
        this.signs = signs;
        this.body = body;
    }

    private record Read(String reader, List<Strand> strands, Set<String> quantities) {}

    String of(Manoeuvre manoeuvre, Item item) {
        List<Strand> strands = signs.strands(body, Signs.usual(manoeuvre, item));
        Set<String> quantities = signs.quantities(body, Signs.usual(manoeuvre, item));
        Object read =
                strands.isEmpty() && quantities.isEmpty() ? item : new Read(manoeuvre.reader(), strands, quantities);
        return known.computeIfAbsent(read, r -> "s" + known.size());
    }
}

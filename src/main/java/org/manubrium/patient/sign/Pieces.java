package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;

/** A long pathway as strands, one for each structure it passes, so that a term can say on which of them the lesion lies. */
final class Pieces {
    private Pieces() {}

    static List<Strand> of(Pathway... pathways) {
        Map<String, List<Pathway>> byStructure = new LinkedHashMap<>();
        for (Pathway pathway : pathways) {
            for (Site site : pathway.sites()) {
                byStructure
                        .computeIfAbsent(site.structure(), s -> new ArrayList<>())
                        .add(Pathway.at(site));
            }
        }
        List<Strand> found = new ArrayList<>();
        byStructure.forEach((structure, sites) -> found.add(new Strand(structure, Pathway.series(sites))));
        return List.copyOf(found);
    }
}

package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;
import org.manubrium.patient.Quantity;

/**
 * One thing hurt among those on which a sign depends: the lesions of one division on the strands that play one part in it,
 * or the shifts of one family of quantities.
 *
 * @param part the strands' part, or the family
 * @param names in which terms may name it: the part, also as "shocked" while more of it shows as shock than as release; or
 *     the family and the quantities, with and without the way they are moved
 * @param division in which the lesions lie; blank for quantities
 * @param sites of the lesions; empty for quantities
 * @param quantities that are shifted; empty for lesions
 * @param ways the strands' pathways; empty for quantities
 */
record Hurt(
        String part, Set<String> names, String division, Set<Site> sites, Set<String> quantities, List<Pathway> ways) {
    private static final double LEAST = 0.05;

    /** Everything of these ailments that lies on the strands, or among the quantities. */
    static List<Hurt> of(Body body, List<Ailment> ailments, List<Strand> strands, Set<String> quantities) {
        Body alone = body.only(ailments::contains);
        Map<String, Hurt> found = new LinkedHashMap<>();
        strands.stream()
                .filter(strand -> alone.conduction(strand.pathway()) <= 1 - LEAST)
                .forEach(strand -> onStrand(alone, strand).forEach(hurt -> {
                    found.merge(strand.role() + "/" + hurt.division, hurt, Hurt::and);
                }));
        Set<String> families = new LinkedHashSet<>();
        quantities.forEach(quantity -> families.add(Quantity.family(quantity)));
        return Stream.concat(
                        found.values().stream(),
                        families.stream().flatMap(family -> shifted(ailments, family, quantities).stream()))
                .toList();
    }

    private static List<Hurt> onStrand(Body alone, Strand strand) {
        Map<String, Set<Site>> byDivision = new LinkedHashMap<>();
        alone.ailments().stream()
                .flatMap(ailment -> ailment.lesions().stream())
                .filter(lesion -> lesion.loss() > 0)
                .map(Lesion::site)
                .filter(strand.pathway()::passes)
                .forEach(site -> byDivision
                        .computeIfAbsent(division(alone, site), d -> new LinkedHashSet<>())
                        .add(site));
        List<Pathway> way = List.of(strand.pathway());
        Set<String> names = names(alone, strand);
        return byDivision.entrySet().stream()
                .map(in -> new Hurt(strand.role(), names, in.getKey(), in.getValue(), Set.of(), way))
                .toList();
    }

    private static Set<String> names(Body alone, Strand strand) {
        boolean shocked = alone.shows(Phase.SHOCK)
                && alone.lost(strand.pathway(), Phase.SHOCK) > alone.lost(strand.pathway(), Phase.RELEASE);
        return shocked ? Set.of(strand.role(), "shocked " + strand.role()) : Set.of(strand.role());
    }

    private static String division(Body body, Site site) {
        return body.anatomy().structure(site.structure()).division();
    }

    private static List<Hurt> shifted(List<Ailment> ailments, String family, Set<String> quantities) {
        Set<String> names = new LinkedHashSet<>();
        Set<String> moved = new LinkedHashSet<>();
        for (String quantity : quantities) {
            double shift = ailments.stream()
                    .mapToDouble(a -> a.shifts().getOrDefault(quantity, 0.0))
                    .sum();
            if (shift != 0 && Quantity.family(quantity).equals(family)) {
                moved.add(quantity);
                names.addAll(List.of(family, quantity, (shift > 0 ? "more " : "less ") + quantity));
            }
        }
        return moved.isEmpty() ? List.of() : List.of(new Hurt(family, names, "", Set.of(), moved, List.of()));
    }

    /** Both as one; the first one's division stands for both. */
    Hurt and(Hurt other) {
        return new Hurt(
                part,
                both(names, other.names),
                division,
                both(sites, other.sites),
                both(quantities, other.quantities),
                List.copyOf(both(ways, other.ways)));
    }

    private static <T> Set<T> both(Iterable<T> some, Iterable<T> others) {
        Set<T> found = new LinkedHashSet<>();
        some.forEach(found::add);
        others.forEach(found::add);
        return found;
    }

    /** The same body without it. */
    Body mendedIn(Body body) {
        return body.with(body.ailments().stream()
                .map(ailment -> ailment.mended(sites, quantities))
                .toList());
    }

    /** How much it stops of its ways, summed over them. */
    double taken(Body body) {
        Body mended = mendedIn(body);
        return ways.stream()
                .mapToDouble(way -> mended.conduction(way) - body.conduction(way))
                .sum();
    }

    /** Those of one part or family together. */
    static List<Hurt> together(List<Hurt> all) {
        Map<String, Hurt> found = new LinkedHashMap<>();
        all.forEach(hurt -> found.merge(hurt.part, hurt, Hurt::and));
        return new ArrayList<>(found.values());
    }
}

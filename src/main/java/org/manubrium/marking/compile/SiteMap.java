package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;

/**
 * The sites of some pathways and the steps between them. Two sites are one step apart when one follows the other on a
 * pathway, or when they are neighbouring levels of the same structure on the same side.
 */
final class SiteMap {
    /** At three steps nothing is earned, so nothing further is looked for. */
    private static final int REACH = 2;

    private final Map<Site, Set<Site>> next = new LinkedHashMap<>();

    SiteMap(Collection<Pathway> pathways) {
        pathways.forEach(this::lay);
    }

    Set<Site> sites() {
        return next.keySet();
    }

    /** The sites within reach of any of the true ones, on no side on which none of these lies, and their distance. */
    Map<Site, Integer> around(Collection<Site> truth) {
        Map<Site, Integer> steps = new LinkedHashMap<>();
        truth.forEach(site -> steps.put(site, 0));
        sites().stream()
                .filter(site -> truth.stream().anyMatch(t -> t.covers(site)))
                .forEach(site -> steps.put(site, 0));
        List<Site> edge = List.copyOf(steps.keySet());
        for (int step = 1; step <= REACH; step++) {
            List<Site> found = new ArrayList<>();
            for (Site site : edge) {
                for (Site other : neighbours(site)) {
                    if (steps.putIfAbsent(other, step) == null) {
                        found.add(other);
                    }
                }
            }
            edge = found;
        }
        Set<Side> sides = new LinkedHashSet<>(truth.stream().map(Site::side).toList());
        steps.keySet().removeIf(site -> wrong(site.side(), sides));
        return steps;
    }

    private static boolean wrong(Side side, Set<Side> sides) {
        return side != Side.NONE && !sides.contains(side) && sides.contains(side.opposite());
    }

    private Set<Site> neighbours(Site site) {
        Set<Site> found = new LinkedHashSet<>(next.getOrDefault(site, Set.of()));
        site.segment()
                .ifPresent(segment -> List.of(-1, 1)
                        .forEach(way -> segment.down(way).ifPresent(level -> found.add(at(site, level)))));
        return found;
    }

    private static Site at(Site site, Segment level) {
        return new Site(site.structure(), Optional.of(level), site.side(), site.level());
    }

    /** The sites at which a stretch begins and ends; none for a stretch that is empty. */
    private record Ends(Set<Site> first, Set<Site> last) {}

    private Ends lay(Pathway pathway) {
        if (pathway instanceof Pathway.At at) {
            next.computeIfAbsent(at.site(), s -> new LinkedHashSet<>());
            return new Ends(Set.of(at.site()), Set.of(at.site()));
        }
        if (pathway instanceof Pathway.Stretch stretch) {
            return inSeries(stretch.sitesPassed().stream().map(Pathway::at).toList());
        }
        return pathway instanceof Pathway.Series series
                ? inSeries(series.parts())
                : inParallel((Pathway.Parallel) pathway);
    }

    private Ends inSeries(List<Pathway> parts) {
        Ends whole = new Ends(Set.of(), Set.of());
        for (Pathway part : parts) {
            Ends ends = lay(part);
            if (!ends.first.isEmpty()) {
                join(whole.last, ends.first);
                whole = new Ends(whole.first.isEmpty() ? ends.first : whole.first, ends.last);
            }
        }
        return whole;
    }

    private Ends inParallel(Pathway.Parallel parallel) {
        Set<Site> first = new LinkedHashSet<>();
        Set<Site> last = new LinkedHashSet<>();
        for (Pathway.Branch branch : parallel.branches()) {
            Ends ends = lay(branch.path());
            first.addAll(ends.first);
            last.addAll(ends.last);
        }
        return new Ends(first, last);
    }

    private void join(Set<Site> from, Set<Site> to) {
        for (Site a : from) {
            for (Site b : to) {
                next.computeIfAbsent(a, s -> new LinkedHashSet<>()).add(b);
                next.computeIfAbsent(b, s -> new LinkedHashSet<>()).add(a);
            }
        }
    }
}

package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Region;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.anatomy.UnknownSite;
import org.manubrium.marking.key.SiteKey;

/** Every way to name a place that takes in more than one site: regions, and structures without their level. */
final class Gazetteer {
    private final Map<String, Set<Site>> wide = new LinkedHashMap<>();

    Gazetteer(Anatomy anatomy) {
        for (Region region : anatomy.tables().regions()) {
            spellings(region).forEach(text -> sites(anatomy, text).ifPresent(sites -> wide.put(text, sites)));
        }
    }

    private static Optional<Set<Site>> sites(Anatomy anatomy, String text) {
        try {
            return Optional.of(anatomy.lesions(text, 1, new Onset(0, "now")).stream()
                    .map(Lesion::site)
                    .collect(Collectors.toSet()));
        } catch (UnknownSite e) {
            return Optional.empty();
        }
    }

    private static List<String> spellings(Region region) {
        List<String> found = new ArrayList<>();
        for (String segment :
                region.segments() ? Segment.all().stream().map(Segment::name).toList() : List.of("")) {
            for (String side : region.sided() ? List.of(Side.RIGHT.word(), Side.LEFT.word()) : List.of("")) {
                found.add(String.join(" ", region.name(), segment, side, region.extent())
                        .trim()
                        .replaceAll(" +", " "));
            }
        }
        return found;
    }

    /** A region that is exactly these sites, as a clinician says it. */
    Optional<String> naming(Set<Site> sites) {
        return wide.entrySet().stream()
                .filter(region -> region.getValue().equals(sites))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /**
     * All names of places near the truth. A place that takes in more than what is damaged is one step further off than
     * the nearest of its sites.
     */
    List<SiteKey.Near> near(Map<Site, Integer> steps, Set<Site> truth) {
        Map<String, Integer> found = new LinkedHashMap<>();
        steps.forEach((site, step) -> {
            found.merge(SiteKey.words(site.toString()), step, Math::min);
            if (site.level().isPresent()) {
                Site whole = new Site(site.structure(), site.segment(), site.side(), Optional.empty());
                found.merge(SiteKey.words(whole.toString()), step + 1, Math::min);
            }
        });
        wide.forEach((text, sites) -> sites.stream()
                .filter(steps::containsKey)
                .mapToInt(steps::get)
                .min()
                .ifPresent(least ->
                        found.merge(SiteKey.words(text), least + (truth.containsAll(sites) ? 0 : 1), Math::min)));
        return found.entrySet().stream()
                .filter(entry -> entry.getValue() < 3)
                .map(entry -> new SiteKey.Near(entry.getKey(), entry.getValue()))
                .toList();
    }
}

package org.manubrium.school.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.school.mark.Lessons.Drawn;
import org.manubrium.school.mark.Lessons.Station;

/** Draws the pathways of the abnormal essential signs, with the true place and the student's. */
final class Pathways {
    /** A drawing that fits a page; a longer way is drawn around the marked places. */
    private static final int LONGEST = 9;

    private static final int MOST = 2;

    private Pathways() {}

    /** Those on which the student's place lies come first. */
    static List<Drawn> of(CompiledKey key, String said) {
        List<Drawn> all = new ArrayList<>();
        for (KeyLine line : key.essentials()) {
            if (!line.site().equals(SiteKey.NONE) && line.site().pathway().size() > 1) {
                all.add(new Drawn(line.label(), stations(line.site(), said)));
            }
        }
        return all.stream()
                .sorted(java.util.Comparator.comparing(
                        drawn -> !drawn.stations().stream().anyMatch(Station::yours)))
                .limit(MOST)
                .toList();
    }

    private static List<Station> stations(SiteKey site, String said) {
        List<Station> all = site.pathway().stream()
                .map(place -> new Station(
                        place,
                        site.steps(place).orElse(1) == 0,
                        !said.isBlank() && SiteKey.words(place).equals(SiteKey.words(said))))
                .toList();
        int first = IntStream.range(0, all.size())
                .filter(i -> all.get(i).lesion() || all.get(i).yours())
                .findFirst()
                .orElse(0);
        int from = Math.max(0, Math.min(first - LONGEST / 2, all.size() - LONGEST));
        return all.subList(from, Math.min(all.size(), from + LONGEST));
    }
}

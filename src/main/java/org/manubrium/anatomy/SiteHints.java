package org.manubrium.anatomy;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sites that may have been meant by a name that no table holds. */
final class SiteHints {
    private static final int MOST = 4;

    private final Collection<Structure> structures;
    private final Set<String> regions;

    SiteHints(Collection<Structure> structures, Set<String> regions) {
        this.structures = structures;
        this.regions = regions;
    }

    /** The end of a sentence that asks whether one of them was meant; nothing if none is like it. */
    String near(String name) {
        if (name.length() < 3) {
            return "";
        }
        List<String> like = like(name);
        return like.isEmpty()
                ? ""
                : like.stream()
                        .map(site -> "\"" + site + "\"")
                        .collect(Collectors.joining(", ", "; did you mean ", "?"));
    }

    /** Names that hold the whole of it, else a level or a division called so, else names that hold one of its words. */
    private List<String> like(String name) {
        return Stream.of(holding(name), called(name), sharing(name))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private List<String> holding(String name) {
        return first(names().filter(known -> known.contains(name)));
    }

    private List<String> called(String name) {
        return first(structures.stream()
                .filter(s -> s.division().equals(name) || s.levels().contains(name))
                .map(s -> s.levels().contains(name) ? s.name() + " at " + name : s.name()));
    }

    private List<String> sharing(String name) {
        List<String> words =
                Arrays.stream(name.split(" ")).filter(w -> w.length() > 5).toList();
        return first(names().filter(known -> words.stream().anyMatch(known::contains))
                .distinct()
                .sorted(Comparator.comparingInt((String known) -> -begunAlike(known, name))));
    }

    private static int begunAlike(String one, String other) {
        int same = 0;
        while (same < Math.min(one.length(), other.length()) && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same;
    }

    private Stream<String> names() {
        return Stream.concat(structures.stream().map(Structure::name), regions.stream());
    }

    private static List<String> first(Stream<String> names) {
        return names.distinct().limit(MOST).toList();
    }
}

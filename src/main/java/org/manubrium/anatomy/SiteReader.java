package org.manubrium.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a site as a clinician says it, and lists the single structures on which a lesion there lies. */
final class SiteReader {
    private final Map<String, Structure> structures;
    private final Map<String, Region> regions;
    private final Map<String, List<SiteName>> names;
    private final SiteHints hints;

    SiteReader(Map<String, Structure> structures, Map<String, Region> regions, List<SiteName> names) {
        this.structures = structures;
        this.regions = regions;
        this.names = names.stream().collect(Collectors.groupingBy(SiteName::said));
        this.hints = new SiteHints(structures.values(), regions.keySet());
    }

    /** One structure and how much of the loss said of the whole reaches it. */
    record Share(Site site, double share) {}

    /** The single structures named by the text, each with the share of the loss that reaches it. */
    List<Share> read(String text) {
        SiteWords words = SiteWords.of(text);
        boolean bareRoot = words.name().isEmpty() && !words.segments().isEmpty();
        return meant(bareRoot ? words.called("root") : words).stream()
                .flatMap(one -> one(one, text).stream())
                .toList();
    }

    /** What the words stand for by another name; the words themselves if they have none. */
    private List<SiteWords> meant(SiteWords words) {
        Optional<String> ofLevel =
                words.level().map(level -> words.name() + " at " + level).filter(names::containsKey);
        List<SiteName> others = names.getOrDefault(ofLevel.orElse(words.name()), List.of());
        if (others.isEmpty()) {
            return List.of(known(words));
        }
        return others.stream()
                .flatMap(other -> {
                    SiteWords next = words.meaning(other, ofLevel.isPresent());
                    boolean settled = next.name().equals(words.name());
                    return (settled ? List.of(known(next)) : meant(next)).stream();
                })
                .toList();
    }

    /** The words with a name that the tables hold, where a plural, a level without "at" or a half is all that differs. */
    private SiteWords known(SiteWords words) {
        String name = words.name();
        if (holds(name)) {
            boolean half = !words.sides().isEmpty() && takesNoSide(name) && regions.containsKey(name + " half");
            return half ? words.called(name + " half") : words;
        }
        if (name.endsWith("s") && holds(name.substring(0, name.length() - 1))) {
            return words.called(name.substring(0, name.length() - 1));
        }
        return structures.values().stream()
                .filter(s -> name.startsWith(s.name() + " "))
                .filter(s -> s.levels().contains(name.substring(s.name().length() + 1)))
                .findFirst()
                .map(s -> words.at(s.name(), name.substring(s.name().length() + 1)))
                .orElse(words);
    }

    private boolean holds(String name) {
        return regions.containsKey(name) || structures.containsKey(name);
    }

    private boolean takesNoSide(String name) {
        Region region = regions.get(name);
        return region != null && !region.sided();
    }

    private List<Share> one(SiteWords words, String text) {
        Region region = regions.get(words.name());
        if (region != null) {
            return inRegion(region, words, text);
        }
        Structure structure = structures.get(words.name());
        if (structure == null) {
            throw new UnknownSite("no structure is called \"" + words.name() + "\" in \"" + text + "\""
                    + hints.near(words.name()) + ": expected for "
                    + "example \"root C7 left\", \"spinal cord T8 right half\" or \"ulnar nerve left at elbow\"");
        }
        return inStructure(structure, words, text);
    }

    private List<Share> inStructure(Structure structure, SiteWords words, String text) {
        check(structure.name(), structure.segments(), structure.sided(), words, text);
        words.level().filter(l -> !structure.levels().contains(l)).ifPresent(l -> {
            throw new UnknownSite(
                    "the " + structure.name() + " has no level \"" + l + "\" in \"" + text + "\": expected "
                            + (structure.levels().isEmpty() ? "none" : String.join(", ", structure.levels())));
        });
        List<Share> found = new ArrayList<>();
        for (Side side : structure.sided() ? words.sides() : List.of(Side.NONE)) {
            for (Optional<Segment> segment : optional(words.segments())) {
                found.add(new Share(new Site(structure.name(), segment, side, words.level()), 1));
            }
        }
        return found;
    }

    private List<Share> inRegion(Region region, SiteWords words, String text) {
        check(region.name(), region.segments(), region.sided(), words, text);
        words.level().ifPresent(l -> {
            throw new UnknownSite(
                    "the " + words.name() + " has no level \"" + l + "\" in \"" + text + "\": expected none");
        });
        List<Share> found = new ArrayList<>();
        for (Side side : region.sided() ? words.sides() : List.of(Side.NONE)) {
            for (Optional<Segment> segment : optional(words.segments())) {
                region.parts().forEach(part -> found.addAll(shares(part, side, segment)));
            }
        }
        return found;
    }

    private List<Share> shares(Region.Part part, Side side, Optional<Segment> segment) {
        Structure structure = structures.get(part.structure());
        if (structure == null) {
            throw new IllegalStateException("a region names the unknown structure " + part.structure());
        }
        Optional<String> level = Optional.of(part.level()).filter(l -> !l.isBlank());
        return part.side().from(side).stream()
                .map(s -> new Share(
                        new Site(part.structure(), structure.segments() ? segment : Optional.empty(), s, level),
                        part.share()))
                .toList();
    }

    private static List<Optional<Segment>> optional(List<Segment> segments) {
        return segments.isEmpty()
                ? List.of(Optional.empty())
                : segments.stream().map(Optional::of).toList();
    }

    private static void check(String name, boolean segments, boolean sided, SiteWords words, String text) {
        if (segments && words.segments().isEmpty()) {
            throw new UnknownSite("\"" + text + "\" names no segment: expected for example \"" + name + " C7\"");
        }
        if (!segments && !words.segments().isEmpty()) {
            throw new UnknownSite("the " + name + " in \"" + text + "\" is not said with a segment");
        }
        if (sided && words.sides().isEmpty()) {
            throw new UnknownSite("\"" + text + "\" names no side: expected right, left or both");
        }
        if (!sided && !words.sides().isEmpty()) {
            throw new UnknownSite("the " + name + " in \"" + text + "\" lies in the midline and takes no side");
        }
    }
}

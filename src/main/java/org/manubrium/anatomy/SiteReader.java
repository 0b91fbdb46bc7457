package org.manubrium.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a site as a clinician says it, and lists the single structures on which a lesion there lies. */
final class SiteReader {
    private static final Pattern SEGMENTS =
            Pattern.compile("\\b([CTLS]\\d{1,2})(?:\\s*[-–]\\s*([CTLS]?\\d{1,2}))?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern LEVEL = Pattern.compile("\\s+(?:at|in)\\s+(?:the\\s+)?(.+)$");
    private static final Pattern HALF = Pattern.compile("\\b(right|left)\\s+half\\b");
    private static final Pattern SIDE = Pattern.compile("\\b(right|left|both sides|both|bilateral)\\b");

    private final Map<String, Structure> structures;
    private final Map<String, Region> regions;

    SiteReader(Map<String, Structure> structures, Map<String, Region> regions) {
        this.structures = structures;
        this.regions = regions;
    }

    /** The single structures named by the text, each with the share of the loss that reaches it. */
    List<Share> read(String text) {
        Words words = words(text);
        Region region = regions.get(words.name);
        if (region != null) {
            return inRegion(region, words, text);
        }
        Structure structure = structures.get(words.name);
        if (structure == null) {
            throw new UnknownSite("no structure is called \"" + words.name + "\" in \"" + text + "\": expected for "
                    + "example \"root C7 left\", \"spinal cord T8 right half\" or \"ulnar nerve left at elbow\"");
        }
        return inStructure(structure, words, text);
    }

    /** One structure and how much of the loss said of the whole reaches it. */
    record Share(Site site, double share) {}

    private record Words(String name, List<Segment> segments, List<Side> sides, Optional<String> level) {}

    private static Words words(String text) {
        String rest = text.trim().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Optional<String> level = Optional.empty();
        Matcher atLevel = LEVEL.matcher(rest);
        if (atLevel.find()) {
            level = Optional.of(atLevel.group(1).trim());
            rest = rest.substring(0, atLevel.start());
        }
        List<Side> sides = new ArrayList<>();
        Matcher half = HALF.matcher(rest);
        if (half.find()) {
            sides.add(Side.of(half.group(1)).orElseThrow());
            rest = half.replaceFirst("half");
        }
        Matcher side = SIDE.matcher(rest);
        if (side.find()) {
            sides.addAll(Side.of(side.group(1)).map(List::of).orElse(List.of(Side.RIGHT, Side.LEFT)));
            rest = side.replaceFirst("");
        }
        List<Segment> segments = new ArrayList<>();
        Matcher found = SEGMENTS.matcher(rest);
        if (found.find()) {
            segments.addAll(range(found.group(1), found.group(2), text));
            rest = found.replaceFirst("");
        }
        return new Words(rest.trim().replaceAll("\\s+", " "), segments, sides, level);
    }

    private static List<Segment> range(String first, @org.jspecify.annotations.Nullable String last, String text) {
        String end = last == null ? first : last;
        String lastName = Character.isDigit(end.charAt(0)) ? first.charAt(0) + end : end;
        Segment from = Segment.of(first).orElseThrow(() -> noSegment(first, text));
        Segment to = Segment.of(lastName).orElseThrow(() -> noSegment(lastName, text));
        if (from.to(to).isEmpty()) {
            throw new UnknownSite("\"" + text + "\" names segments upwards: write the upper one first");
        }
        return from.to(to);
    }

    private static UnknownSite noSegment(String name, String text) {
        return new UnknownSite(
                "there is no segment " + name.toUpperCase(Locale.ROOT) + " in \"" + text + "\": expected C1 to S5");
    }

    private List<Share> inStructure(Structure structure, Words words, String text) {
        check(structure.name(), structure.segments(), structure.sided(), words, text);
        words.level.filter(l -> !structure.levels().contains(l)).ifPresent(l -> {
            throw new UnknownSite(
                    "the " + structure.name() + " has no level \"" + l + "\" in \"" + text + "\": expected "
                            + (structure.levels().isEmpty() ? "none" : String.join(", ", structure.levels())));
        });
        List<Share> found = new ArrayList<>();
        for (Side side : structure.sided() ? words.sides : List.of(Side.NONE)) {
            for (Optional<Segment> segment : optional(words.segments)) {
                found.add(new Share(new Site(structure.name(), segment, side, words.level), 1));
            }
        }
        return found;
    }

    private List<Share> inRegion(Region region, Words words, String text) {
        check(region.name(), region.segments(), region.sided(), words, text);
        words.level.ifPresent(l -> {
            throw new UnknownSite(
                    "the " + words.name + " has no level \"" + l + "\" in \"" + text + "\": expected none");
        });
        List<Share> found = new ArrayList<>();
        for (Side side : region.sided() ? words.sides : List.of(Side.NONE)) {
            for (Optional<Segment> segment : optional(words.segments)) {
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

    private static void check(String name, boolean segments, boolean sided, Words words, String text) {
        if (segments && words.segments.isEmpty()) {
            throw new UnknownSite("\"" + text + "\" names no segment: expected for example \"" + name + " C7\"");
        }
        if (!segments && !words.segments.isEmpty()) {
            throw new UnknownSite("the " + name + " in \"" + text + "\" is not said with a segment");
        }
        if (sided && words.sides.isEmpty()) {
            throw new UnknownSite("\"" + text + "\" names no side: expected right, left or both");
        }
        if (!sided && !words.sides.isEmpty()) {
            throw new UnknownSite("the " + name + " in \"" + text + "\" lies in the midline and takes no side");
        }
    }
}

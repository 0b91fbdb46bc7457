package org.manubrium.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A site as it was said, taken apart: what it is called, its segments, its sides, its level. */
record SiteWords(String name, List<Segment> segments, List<Side> sides, Optional<String> level) {
    private static final String SEGMENT = "[CTLS]\\d{1,2}";
    private static final Pattern SEGMENTS = Pattern.compile(
            "\\b(" + SEGMENT + ")(?:\\s*(?:[-–]|\\bto\\b)\\s*([CTLS]?\\d{1,2}))?\\b(?:\\s*(?:,|\\+|\\band\\b)\\s*(?="
                    + SEGMENT + "\\b))?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LEVEL = Pattern.compile("\\s+(?:at|in)\\s+(?:the\\s+)?(.+)$");
    private static final Pattern HALF = Pattern.compile("\\b(right|left)\\s+half\\b(\\s+of(?:\\s+the)?\\b)?");
    private static final Pattern SIDE =
            Pattern.compile("(?:\\bon\\s+(?:the\\s+)?)?\\b(right|left|both sides|both|bilateral)\\b(?:[- ]sided\\b)?");

    static SiteWords of(String text) {
        String rest = text.trim().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        List<Side> sides = new ArrayList<>();
        Matcher half = HALF.matcher(rest);
        if (half.find()) {
            sides.add(Side.of(half.group(1)).orElseThrow());
            rest = half.group(2) == null ? half.replaceFirst("half") : half.replaceFirst("") + " half";
        }
        Matcher side = SIDE.matcher(rest);
        if (side.find()) {
            sides.addAll(Side.of(side.group(1)).map(List::of).orElse(List.of(Side.RIGHT, Side.LEFT)));
            rest = side.replaceFirst("");
        }
        List<Segment> segments = segments(rest, text);
        rest = SEGMENTS.matcher(rest)
                .replaceAll("")
                .replaceAll("\\s+", " ")
                .trim()
                .replaceAll(" (at|from|of)( half)?$", "$2");
        Optional<String> level = Optional.empty();
        Matcher atLevel = LEVEL.matcher(rest);
        if (atLevel.find()) {
            level = Optional.of(atLevel.group(1).trim());
            rest = rest.substring(0, atLevel.start());
        }
        return new SiteWords(plain(rest), segments, sides, level);
    }

    private static String plain(String rest) {
        return rest.replaceAll("^\\s*the\\b", " ").trim().replaceAll("\\s+", " ");
    }

    private static List<Segment> segments(String rest, String text) {
        List<Segment> segments = new ArrayList<>();
        Matcher found = SEGMENTS.matcher(rest);
        while (found.find()) {
            segments.addAll(range(found.group(1), found.group(2), text));
        }
        return segments;
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

    SiteWords called(String other) {
        return new SiteWords(other, segments, sides, level);
    }

    SiteWords at(String otherName, String otherLevel) {
        return new SiteWords(otherName, segments, sides, Optional.of(otherLevel));
    }

    /** What another name means; what was said comes before what is meant when nothing is. */
    SiteWords meaning(SiteName other, boolean levelNamed) {
        return new SiteWords(
                other.meant(),
                segments.isEmpty() ? other.segments() : segments,
                sides.isEmpty() ? other.sides() : sides,
                levelNamed ? other.level() : level.or(other::level));
    }
}

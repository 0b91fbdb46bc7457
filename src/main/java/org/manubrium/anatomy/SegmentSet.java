package org.manubrium.anatomy;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A set of root levels, such as C6-C7. Written as a range where it is one, else as a list. */
public record SegmentSet(Set<Segment> segments) {
    public SegmentSet {
        segments = segments.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(segments));
    }

    public static SegmentSet of(Collection<Segment> segments) {
        return new SegmentSet(Set.copyOf(segments));
    }

    /** Reads {@code C7}, {@code C6-C8} or a list with spaces or commas; empty if a word is neither or runs upwards. */
    public static Optional<SegmentSet> parse(String text) {
        EnumSet<Segment> found = EnumSet.noneOf(Segment.class);
        for (String word : text.trim().split("[,\\s]+", -1)) {
            String[] ends = word.split("[-–]", -1);
            Optional<Segment> first = Segment.of(ends[0]);
            Optional<Segment> last = Segment.of(ends[ends.length - 1]);
            if (ends.length > 2 || first.isEmpty() || last.isEmpty()) {
                return Optional.empty();
            }
            List<Segment> stretch = first.get().to(last.get());
            if (stretch.isEmpty()) {
                return Optional.empty();
            }
            found.addAll(stretch);
        }
        return Optional.of(new SegmentSet(found));
    }

    /** Shared members over all members, 0..1; two empty sets agree wholly. */
    public double overlap(SegmentSet other) {
        if (segments.isEmpty() && other.segments.isEmpty()) {
            return 1;
        }
        long shared = segments.stream().filter(other.segments::contains).count();
        return shared / (double) (segments.size() + other.segments.size() - shared);
    }

    @Override
    public String toString() {
        if (segments.isEmpty()) {
            return "no root";
        }
        Segment first = Collections.min(segments);
        Segment last = Collections.max(segments);
        boolean range = first.to(last).size() == segments.size();
        if (segments.size() == 1) {
            return first.name();
        }
        return range ? first + "-" + last : segments.stream().map(Segment::name).collect(Collectors.joining(", "));
    }
}

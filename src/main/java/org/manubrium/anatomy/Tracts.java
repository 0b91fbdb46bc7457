package org.manubrium.anatomy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Lays the tracts between the brain and a segment from their rows. */
final class Tracts {
    private static final Pattern END = Pattern.compile("@([+-]\\d+)?|[CTLS]\\d+");

    private final Map<String, List<TractStep>> byName;

    Tracts(List<TractStep> rows) {
        this.byName = rows.stream().collect(Collectors.groupingBy(TractStep::tract));
    }

    /**
     * The tract that serves one side of the body at one level.
     *
     * @param side the side of the part of the body served, or of the eye
     * @param level the segment served; any segment for a tract whose rows do not name "@"
     * @param area face, arm, trunk or leg
     */
    Pathway lay(String tract, Side side, Segment level, String area) {
        List<TractStep> rows = byName.get(tract);
        if (rows == null) {
            throw new IllegalArgumentException("no tract is called \"" + tract + "\"");
        }
        SortedMap<Integer, SortedMap<String, List<TractStep>>> steps = new TreeMap<>();
        for (TractStep row : rows) {
            steps.computeIfAbsent(row.step(), s -> new TreeMap<>())
                    .computeIfAbsent(row.branch(), b -> new ArrayList<>())
                    .add(row);
        }
        return Pathway.series(steps.values().stream()
                .map(branches -> step(branches.values(), side, level, area))
                .toList());
    }

    private static Pathway step(Iterable<List<TractStep>> branches, Side side, Segment level, String area) {
        List<Pathway.Branch> parallel = new ArrayList<>();
        for (List<TractStep> branch : branches) {
            List<Pathway> series = new ArrayList<>();
            branch.forEach(row -> series.addAll(sites(row, side, level, area)));
            parallel.add(new Pathway.Branch(branch.get(0).weight(), Pathway.series(series)));
        }
        return parallel.size() == 1 ? parallel.get(0).path() : Pathway.parallel(parallel);
    }

    private static List<Pathway> sites(TractStep row, Side side, Segment level, String area) {
        Optional<String> named =
                Optional.of(row.level().equals("@area") ? area : row.level()).filter(l -> !l.isBlank());
        List<Pathway> found = new ArrayList<>();
        for (Side s : row.side().from(side)) {
            if (row.segments().isBlank()) {
                found.add(Pathway.at(new Site(row.structure(), Optional.empty(), s, named)));
            } else {
                found.add(Pathway.stretch(range(row.segments(), level).stream()
                        .map(segment -> new Site(row.structure(), Optional.of(segment), s, named))
                        .toList()));
            }
        }
        return found;
    }

    /** The segments of "C1..@-1" for the level served; none where the range would end above its start. */
    private static List<Segment> range(String text, Segment level) {
        String[] ends = text.split("\\.\\.", -1);
        Optional<Segment> first = end(ends[0], level);
        Optional<Segment> last = end(ends[ends.length - 1], level);
        return first.isEmpty() || last.isEmpty() ? List.of() : first.get().to(last.get());
    }

    private static Optional<Segment> end(String text, Segment level) {
        Matcher matcher = END.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("expected a segment, @, or @-1 in a tract, found \"" + text + "\"");
        }
        if (!text.startsWith("@")) {
            return Segment.of(text);
        }
        return level.down(text.length() == 1 ? 0 : Integer.parseInt(text.substring(1)));
    }
}

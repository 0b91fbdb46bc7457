package org.manubrium.anatomy;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A body of a few structures, made by hand so that every number can be worked out on paper: one extensor of the elbow with
 * two roots and one nerve, its reflex, three key points on the trunk, one on the finger.
 */
final class TinyBody {
    private TinyBody() {}

    private static final String S = "hand-made";

    static Anatomy anatomy() {
        return new Anatomy(tables(stations()));
    }

    static AnatomyTables tables(List<Station> stations) {
        return new AnatomyTables(
                structures(),
                regions(),
                names(),
                tracts(),
                stations,
                Map.of(Segment.C6, "upper trunk", Segment.C7, "middle trunk"),
                List.of(
                        share("triceps", Segment.C6, 0.25),
                        share("triceps", Segment.C7, 0.75),
                        share("triceps-reflex", Segment.C6, 0.25),
                        share("triceps-reflex", Segment.C7, 0.75),
                        share("t8", Segment.T8, 1),
                        share("t9", Segment.T9, 1),
                        share("t10", Segment.T10, 1),
                        share("web", Segment.C6, 0.5),
                        share("web", Segment.C7, 0.5)),
                List.of(new Muscle("triceps", "triceps", "radial-axilla", S, S)),
                List.of(new Movement("elbow-extension", "elbow", Map.of("triceps", 1.0), "arm", 0.9, S, S)),
                List.of(new Arc("triceps-reflex", "triceps reflex", "radial-axilla", "triceps", "arm", S, S)),
                List.of(key("t8"), key("t9"), key("t10"), patch()),
                List.of(),
                List.of(
                        new Modality("pin", Map.of("spinothalamic", 1.0), 0, 1, S, S),
                        new Modality("vibration", Map.of("dorsal column", 1.0), 0.25, 1, S, S)));
    }

    static List<Station> stations() {
        return List.of(
                station("trunk", "brachial plexus", "@trunk", ""),
                station("radial-axilla", "radial nerve", "axilla", "trunk"),
                station("radial-groove", "radial nerve", "spiral groove", "radial-axilla"));
    }

    static Station station(String id, String structure, String level, String parent) {
        return new Station(id, structure, text(level), text(parent), S, S);
    }

    private static Optional<String> text(String cell) {
        return Optional.of(cell).filter(c -> !c.isEmpty());
    }

    private static List<Structure> structures() {
        return List.of(
                new Structure("motor cortex", false, true, List.of("face", "arm", "leg"), "brain", S, S),
                new Structure("lateral corticospinal tract", true, true, List.of(), "cord", S, S),
                new Structure("reticulospinal tract", true, true, List.of(), "cord", S, S),
                new Structure("dorsal column", true, true, List.of(), "cord", S, S),
                new Structure("spinothalamic tract", true, true, List.of(), "cord", S, S),
                new Structure("anterior commissure", true, false, List.of(), "cord", S, S),
                new Structure("anterior horn", true, true, List.of(), "cord", S, S),
                new Structure("dorsal horn", true, true, List.of(), "cord", S, S),
                new Structure("root", true, true, List.of(), "root", S, S),
                new Structure("brachial plexus", false, true, List.of("upper trunk", "middle trunk"), "plexus", S, S),
                new Structure("radial nerve", false, true, List.of("axilla", "spiral groove"), "nerve", S, S),
                new Structure("optic nerve", false, true, List.of(), "nerve", S, S),
                new Structure("neuromuscular junction", false, true, List.of("triceps"), "junction", S, S),
                new Structure("muscle", false, true, List.of("triceps"), "muscle", S, S));
    }

    private static List<Region> regions() {
        List<String> cord =
                List.of("lateral corticospinal tract", "dorsal column", "spinothalamic tract", "dorsal horn");
        return List.of(
                new Region("spinal cord", "half", true, true, parts(cord, Relation.SAME, 1)),
                new Region(
                        "spinal cord", "posterior", true, false, parts(List.of("dorsal column"), Relation.BOTH, 0.5)),
                new Region(
                        "spinal cord",
                        "central",
                        true,
                        false,
                        parts(List.of("anterior commissure"), Relation.NONE, 1)));
    }

    private static List<SiteName> names() {
        Optional<String> none = Optional.empty();
        return List.of(
                new SiteName("cord", "spinal cord", List.of(), none, List.of(), S, S),
                new SiteName("cone", "spinal cord central", Segment.T8.to(Segment.T9), none, List.of(), S, S),
                new SiteName("musculospiral nerve", "radial nerve", List.of(), none, List.of(), S, S),
                new SiteName(
                        "radial nerve at humerus", "radial nerve", List.of(), text("spiral groove"), List.of(), S, S),
                new SiteName("arm", "brachial plexus", List.of(), none, List.of(Side.RIGHT, Side.LEFT), S, S),
                new SiteName("arm", "radial nerve", List.of(), none, List.of(Side.RIGHT, Side.LEFT), S, S));
    }

    private static List<Region.Part> parts(List<String> structures, Relation side, double share) {
        return structures.stream()
                .map(s -> new Region.Part(s, side, "", share, S, S))
                .toList();
    }

    private static List<TractStep> tracts() {
        return List.of(
                step("corticospinal", 1, "a", 1, "motor cortex", Relation.OPPOSITE, "", "@area"),
                step("corticospinal", 2, "a", 1, "lateral corticospinal tract", Relation.SAME, "C1..@", ""),
                step("other descending", 1, "a", 1, "reticulospinal tract", Relation.SAME, "C1..@", ""),
                step("dorsal column", 1, "a", 1, "dorsal column", Relation.SAME, "C1..@", ""),
                step("spinothalamic", 1, "a", 1, "dorsal horn", Relation.SAME, "@", ""),
                step("spinothalamic", 2, "a", 0.5, "anterior commissure", Relation.NONE, "@", ""),
                step("spinothalamic", 2, "a", 0.5, "spinothalamic tract", Relation.OPPOSITE, "C1..@-1", ""),
                step("spinothalamic", 2, "b", 0.5, "anterior commissure", Relation.NONE, "@-1", ""),
                step("spinothalamic", 2, "b", 0.5, "spinothalamic tract", Relation.OPPOSITE, "C1..@-2", ""));
    }

    private static TractStep step(
            String tract,
            int step,
            String branch,
            double weight,
            String structure,
            Relation side,
            String segments,
            String level) {
        return new TractStep(tract, step, branch, weight, structure, side, segments, level, S, S);
    }

    private static RootShare share(String owner, Segment root, double weight) {
        return new RootShare(owner, root, weight, S, S);
    }

    private static SkinPoint key(String id) {
        return new SkinPoint(id, id, "key", "", "trunk", Optional.empty(), S, S);
    }

    private static SkinPoint patch() {
        return new SkinPoint("web", "web", "patch", "radial-groove", "arm", Optional.empty(), S, S);
    }
}

package org.manubrium.tables;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.AnatomyTables;
import org.manubrium.anatomy.Arc;
import org.manubrium.anatomy.LimbPoint;
import org.manubrium.anatomy.Modality;
import org.manubrium.anatomy.Movement;
import org.manubrium.anatomy.Muscle;
import org.manubrium.anatomy.Region;
import org.manubrium.anatomy.Relation;
import org.manubrium.anatomy.RootShare;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.SiteName;
import org.manubrium.anatomy.SkinPoint;
import org.manubrium.anatomy.Station;
import org.manubrium.anatomy.Structure;
import org.manubrium.anatomy.TractStep;

/** Reads the anatomy tables. */
final class AnatomyRows {
    private final TableFiles files;

    AnatomyRows(TableFiles files) {
        this.files = files;
    }

    AnatomyTables read() {
        return new AnatomyTables(
                files.rows("structures", AnatomyRows::structure),
                regions(),
                files.rows("site_names", AnatomyRows::siteName),
                files.rows("tract_steps", AnatomyRows::tractStep),
                files.rows("stations", AnatomyRows::station),
                trunks(),
                files.rows("root_shares", AnatomyRows::rootShare),
                files.rows(
                        "muscles",
                        r -> new Muscle(
                                r.word("id"),
                                r.word("name"),
                                r.text("station"),
                                r.word("source"),
                                r.word("confidence"))),
                movements(),
                files.rows("arcs", AnatomyRows::arc),
                files.rows("skin_points", AnatomyRows::point),
                files.rows(
                        "limb_points",
                        r -> new LimbPoint(
                                r.word("area"),
                                r.word("point"),
                                r.number("share"),
                                r.word("source"),
                                r.word("confidence"))),
                modalities());
    }

    private static Structure structure(Row r) {
        return new Structure(
                r.word("name"),
                r.yes("segments"),
                r.yes("sided"),
                r.list("levels"),
                r.word("division"),
                r.word("source"),
                r.word("confidence"));
    }

    private static SiteName siteName(Row r) {
        return new SiteName(
                r.word("said"),
                r.word("meant"),
                r.text("segments").isEmpty() ? List.of() : segments(r),
                r.maybe("level"),
                r.text("sides").equals("both") ? List.of(Side.RIGHT, Side.LEFT) : List.of(),
                r.word("source"),
                r.word("confidence"));
    }

    private static List<Segment> segments(Row r) {
        return SegmentSet.parse(r.text("segments"))
                .map(set -> List.copyOf(set.segments()))
                .orElseThrow(() -> r.bad("segments: expected for example L2-S5"));
    }

    private record PartRow(String region, String extent, boolean segments, boolean sided, Region.Part part) {}

    private List<Region> regions() {
        List<PartRow> rows = files.rows(
                "region_parts",
                r -> new PartRow(
                        r.word("region"),
                        r.text("extent"),
                        r.yes("segments"),
                        r.yes("sided"),
                        new Region.Part(
                                r.word("structure"),
                                r.one("side", Relation.class),
                                r.text("level"),
                                r.number("share"),
                                r.word("source"),
                                r.word("confidence"))));
        Map<String, List<PartRow>> groups = rows.stream()
                .collect(groupingBy(
                        p -> p.region() + "/" + p.extent(), LinkedHashMap::new, java.util.stream.Collectors.toList()));
        List<Region> regions = new ArrayList<>();
        groups.values().forEach(group -> {
            PartRow first = group.get(0);
            regions.add(new Region(
                    first.region(),
                    first.extent(),
                    first.segments(),
                    first.sided(),
                    group.stream().map(PartRow::part).toList()));
        });
        return regions;
    }

    private static TractStep tractStep(Row r) {
        return new TractStep(
                r.word("tract"),
                r.whole("step"),
                r.text("branch"),
                r.number("weight", 1),
                r.word("structure"),
                r.one("side", Relation.class),
                r.text("segments"),
                r.text("level"),
                r.word("source"),
                r.word("confidence"));
    }

    private static Station station(Row r) {
        return new Station(
                r.word("id"),
                r.word("structure"),
                r.maybe("level"),
                r.maybe("parent"),
                r.word("source"),
                r.word("confidence"));
    }

    private Map<Segment, String> trunks() {
        Map<Segment, String> trunks = new EnumMap<>(Segment.class);
        files.rows("trunks", r -> trunks.put(segment(r, "root"), r.word("trunk")) == null);
        return trunks;
    }

    private static RootShare rootShare(Row r) {
        return new RootShare(
                r.word("owner"), segment(r, "root"), r.number("weight"), r.word("source"), r.word("confidence"));
    }

    private static Segment segment(Row r, String column) {
        return Segment.of(r.word(column))
                .orElseThrow(() -> r.bad(column + ": expected a segment C1 to S5, found \"" + r.text(column) + "\""));
    }

    private record Share(String owner, String member, double share) {}

    private Map<String, Map<String, Double>> shares(String table, String owner, String member) {
        Map<String, Map<String, Double>> found = new LinkedHashMap<>();
        files.rows(table, r -> new Share(r.word(owner), r.word(member), r.number("share")))
                .forEach(s -> found.computeIfAbsent(s.owner(), o -> new LinkedHashMap<>())
                        .put(s.member(), s.share()));
        return found;
    }

    private List<Movement> movements() {
        Map<String, Map<String, Double>> muscles = shares("movement_muscles", "movement", "muscle");
        return files.rows(
                "movements",
                r -> new Movement(
                        r.word("id"),
                        r.word("name"),
                        Optional.ofNullable(muscles.get(r.word("id"))).orElseThrow(() -> r.bad("no muscle moves it")),
                        r.word("area"),
                        r.number("corticospinal_share"),
                        r.word("source"),
                        r.word("confidence")));
    }

    private static Arc arc(Row r) {
        return new Arc(
                r.word("id"),
                r.word("name"),
                r.text("station"),
                r.word("muscle"),
                r.word("area"),
                r.word("source"),
                r.word("confidence"));
    }

    private static SkinPoint point(Row r) {
        return new SkinPoint(
                r.word("id"),
                r.word("name"),
                r.word("kind"),
                r.text("station"),
                r.word("area"),
                r.maybe("joint"),
                r.word("source"),
                r.word("confidence"));
    }

    private List<Modality> modalities() {
        Map<String, Map<String, Double>> tracts = shares("modality_tracts", "modality", "tract");
        return files.rows(
                "modalities",
                r -> new Modality(
                        r.word("id"),
                        Optional.ofNullable(tracts.get(r.word("id"))).orElseThrow(() -> r.bad("no tract carries it")),
                        r.number("neighbour_share"),
                        r.number("enough"),
                        r.word("source"),
                        r.word("confidence")));
    }
}

package org.manubrium.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.SkinPoint;
import org.manubrium.examination.Caution;
import org.manubrium.examination.Deferral;
import org.manubrium.examination.ExaminationTables;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Move;
import org.manubrium.examination.PartnerExercise;
import org.manubrium.examination.Place;
import org.manubrium.examination.PlaceMode;
import org.manubrium.examination.Position;
import org.manubrium.examination.Question;
import org.manubrium.examination.ReadingKind;
import org.manubrium.examination.Scale;
import org.manubrium.examination.Variant;

/** Reads the tables of the examination. */
final class ExaminationRows {
    private final TableFiles files;
    private final List<SkinPoint> points;

    ExaminationRows(TableFiles files, List<SkinPoint> points) {
        this.files = files;
        this.points = points;
    }

    ExaminationTables read() {
        Map<String, Variant> variants = variants();
        return new ExaminationTables(
                files.rows(
                        "positions",
                        r -> new Position(
                                r.word("id"),
                                r.word("name"),
                                r.text("caution"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "moves",
                        r -> new Move(
                                r.word("from"),
                                r.word("to"),
                                r.whole("seconds"),
                                r.word("source"),
                                r.word("confidence"))),
                scales(),
                files.rows(
                        "cautions",
                        r -> new Caution(r.word("id"), r.word("text"), r.word("source"), r.word("confidence"))),
                files.rows(
                        "questions",
                        r -> new Question(
                                r.word("id"),
                                r.word("name"),
                                r.whole("seconds"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows(
                        "deferrals",
                        r -> new Deferral(
                                r.word("id"),
                                r.word("name"),
                                r.text("question"),
                                r.yes("essential"),
                                r.word("source"),
                                r.word("confidence"))),
                files.rows("manoeuvres", r -> manoeuvre(r, variants)),
                files.rows("partner_exercises", ExaminationRows::partnerExercise));
    }

    private static PartnerExercise partnerExercise(Row r) {
        return new PartnerExercise(
                r.word("id"),
                r.word("name"),
                r.list("signs"),
                r.word("partner"),
                r.list("steps"),
                r.word("feel"),
                r.word("wrong"),
                r.list("cautions"),
                r.word("source"),
                r.word("confidence"),
                r.text("note"));
    }

    private List<Scale> scales() {
        List<Level> levels = files.rows(
                "scale_levels",
                r -> new Level(
                        r.word("scale"),
                        r.word("code"),
                        r.word("label"),
                        r.number("at_least", Double.NaN),
                        r.word("source"),
                        r.word("confidence")));
        return files.rows(
                "scales",
                r -> new Scale(
                        r.word("id"),
                        r.word("name"),
                        r.word("quantity"),
                        r.yes("ordered"),
                        levels.stream()
                                .filter(l -> l.scale().equals(r.word("id")))
                                .toList(),
                        r.word("source"),
                        r.word("confidence")));
    }

    private record ChoiceRow(String variant, String name, Variant.Choice choice) {}

    private Map<String, Variant> variants() {
        Map<String, List<ChoiceRow>> groups = new LinkedHashMap<>();
        files.rows(
                        "variants",
                        r -> new ChoiceRow(
                                r.word("variant"),
                                r.word("name"),
                                new Variant.Choice(
                                        r.word("choice"),
                                        r.word("choice_name"),
                                        r.text("how"),
                                        r.word("source"),
                                        r.word("confidence"))))
                .forEach(row -> groups.computeIfAbsent(row.variant(), v -> new ArrayList<>())
                        .add(row));
        Map<String, Variant> variants = new LinkedHashMap<>();
        groups.forEach((id, rows) -> variants.put(
                id,
                new Variant(
                        id,
                        rows.get(0).name(),
                        rows.stream().map(ChoiceRow::choice).toList())));
        return variants;
    }

    private Manoeuvre manoeuvre(Row r, Map<String, Variant> variants) {
        return new Manoeuvre(
                r.word("id"),
                r.word("name"),
                r.word("system"),
                r.list("positions"),
                r.yes("sided"),
                r.one("place_mode", PlaceMode.class),
                places(r),
                r.whole("seconds"),
                r.text("equipment"),
                r.word("intimacy"),
                r.word("technique"),
                r.text("goes_wrong"),
                r.word("when"),
                r.list("cautions"),
                r.list("variants").stream()
                        .map(v -> Optional.ofNullable(variants.get(v))
                                .orElseThrow(() -> r.bad("variants: no variant is called \"" + v + "\"")))
                        .toList(),
                r.word("reads"),
                r.one("kind", ReadingKind.class),
                r.text("scale"),
                r.text("unit"),
                r.number("tolerance", 0),
                r.list("questions"),
                r.word("source"),
                r.word("confidence"));
    }

    /** "skin" stands for every point of the skin, "joints" for those beside a joint; else id=name. */
    private List<Place> places(Row r) {
        return switch (r.text("places")) {
            case "skin" -> points.stream().map(p -> new Place(p.id(), p.name())).toList();
            case "joints" ->
                points.stream()
                        .filter(p -> p.joint().isPresent())
                        .map(p -> new Place(p.id(), p.joint().orElseThrow()))
                        .toList();
            default ->
                r.list("places").stream()
                        .map(text -> {
                            String[] pair = text.split("=", -1);
                            if (pair.length < 2 || pair.length > 3) {
                                throw r.bad("places: expected id=name or id=name=unit, found \"" + text + "\"");
                            }
                            return pair.length == 2
                                    ? new Place(pair[0], pair[1])
                                    : new Place(pair[0], pair[1], pair[2]);
                        })
                        .toList();
        };
    }
}

package org.manubrium.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.school.review.CaseReview;
import org.manubrium.school.review.Sat;
import org.manubrium.school.review.SheetLine;
import org.manubrium.school.review.Student;

/** The map of a case as a page shows it: students down, lines across, the lines numbered and grouped by domain. */
final class MapModel {
    private MapModel() {}

    static Map<String, Object> of(CaseReview one) {
        List<SheetLine> lines = one.lines();
        return Map.of("domains", domains(lines), "columns", columns(lines), "rows", rows(one, lines));
    }

    private static List<Map<String, Object>> domains(List<SheetLine> lines) {
        List<Map<String, Object>> domains = new ArrayList<>();
        for (DomainName name : DomainName.values()) {
            long width = lines.stream().filter(line -> line.domain() == name).count();
            if (width > 0) {
                domains.add(Map.of("name", name.word(), "width", width));
            }
        }
        return domains;
    }

    private static List<Map<String, Object>> columns(List<SheetLine> lines) {
        List<Map<String, Object>> columns = new ArrayList<>();
        for (SheetLine line : lines) {
            columns.add(Map.of("number", columns.size() + 1, "asked", line.asked()));
        }
        return columns;
    }

    private static List<Map<String, Object>> rows(CaseReview one, List<SheetLine> lines) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Student student : one.students()) {
            Optional<Sat> first = one.firstOf(student);
            first.ifPresent(sat -> rows.add(row(sat, sat.sheet().orElseThrow(), lines)));
        }
        return rows;
    }

    private static Map<String, Object> row(Sat sat, MarkSheet sheet, List<SheetLine> lines) {
        return Map.of(
                "name", sat.student().shownAs(),
                "attempt", sat.attempt().id(),
                "total", Percent.oneDecimal(sheet.total()),
                "cells", lines.stream().map(line -> cell(sheet, line)).toList());
    }

    private static Map<String, Object> cell(MarkSheet sheet, SheetLine line) {
        return CaseReview.lineOf(sheet, line)
                .filter(found -> found.scored())
                .map(found -> Map.<String, Object>of(
                        "heat", "heat-" + Percent.heat(found.credit()), "credit", Percent.whole(found.credit())))
                .orElse(Map.of("heat", "", "credit", "–"));
    }
}

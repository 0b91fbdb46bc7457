package org.manubrium.web.review;

import java.util.List;
import java.util.Map;
import org.manubrium.school.review.CaseReview;
import org.manubrium.school.review.Sat;
import org.manubrium.web.shell.Moments;

/** Every attempt at a case as a page lists it. */
final class AttemptsModel {
    private AttemptsModel() {}

    static List<Map<String, Object>> of(CaseReview one, Moments moments) {
        return one.sat().stream().map(sat -> row(sat, moments)).toList();
    }

    private static Map<String, Object> row(Sat sat, Moments moments) {
        return Map.of(
                "id", sat.attempt().id(),
                "name", sat.student().shownAs(),
                "number", sat.attempt().number(),
                "first", sat.attempt().isFirst(),
                "handedIn", sat.attempt().handedInAt().map(moments::read).orElse("under way"),
                "marked", sat.sheet().isPresent(),
                "total",
                        sat.sheet()
                                .map(sheet -> Percent.oneDecimal(sheet.total()))
                                .orElse("–"));
    }
}

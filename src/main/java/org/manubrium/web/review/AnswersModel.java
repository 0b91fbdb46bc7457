package org.manubrium.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.school.review.CaseReview;
import org.manubrium.school.review.LineReview;

/** The lines of a case with the wrong answers given, numbered as on the map. */
final class AnswersModel {
    private static final String NOTHING = "nothing";

    private AnswersModel() {}

    static List<Map<String, Object>> of(CaseReview one) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (LineReview line : one.answers()) {
            lines.add(Map.of(
                    "number", lines.size() + 1,
                    "domain", line.line().domain().word(),
                    "asked", line.line().asked(),
                    "key", line.line().key(),
                    "sheets", line.asked(),
                    "heat", "heat-" + Percent.heat(line.meanCredit()),
                    "mean", Percent.whole(line.meanCredit()),
                    "wrong", line.wrong().stream().map(AnswersModel::given).toList()));
        }
        return lines;
    }

    private static Map<String, Object> given(LineReview.Given given) {
        return Map.of("done", given.done().isBlank() ? NOTHING : given.done(), "times", given.times());
    }
}

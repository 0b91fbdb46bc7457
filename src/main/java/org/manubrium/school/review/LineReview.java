package org.manubrium.school.review;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Line;

/**
 * How a line was answered.
 *
 * @param asked how many sheets hold it and score it
 * @param meanCredit over those sheets, 0..1
 * @param wrong what earned less than the whole credit, the commonest first
 */
public record LineReview(SheetLine line, int asked, double meanCredit, List<Given> wrong) {
    /** Something that was done or answered, and how often; blank for nothing. */
    public record Given(String done, long times) {}

    static LineReview of(SheetLine line, List<MarkSheet> sheets) {
        List<Line> given = sheets.stream()
                .flatMap(sheet -> CaseReview.lineOf(sheet, line).stream())
                .filter(Line::scored)
                .toList();
        Map<String, Long> wrong = given.stream()
                .filter(one -> one.credit() < 1)
                .collect(Collectors.groupingBy(Line::done, Collectors.counting()));
        List<Given> byTimes = wrong.entrySet().stream()
                .map(entry -> new Given(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingLong(Given::times).reversed().thenComparing(Given::done))
                .toList();
        double mean = given.stream().mapToDouble(Line::credit).average().orElse(0);
        return new LineReview(line, given.size(), mean, byTimes);
    }
}

package org.manubrium.school.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.store.SetCase;

/**
 * A set case as its cohort sat it.
 *
 * @param sat every attempt of a student, by student and number
 */
public record CaseReview(SetCase set, String title, int version, List<Student> students, List<Sat> sat) {
    public CaseReview {
        students = List.copyOf(students);
        sat = List.copyOf(sat);
    }

    /** The first attempts that have been handed in and marked. */
    public List<Sat> firsts() {
        return sat.stream().filter(Sat::counts).toList();
    }

    /** A student's first attempt, once it is handed in and marked. */
    public Optional<Sat> firstOf(Student student) {
        return firsts().stream().filter(one -> one.student().equals(student)).findFirst();
    }

    /** Total in per cent of each student's first attempt, by account. */
    Map<Long, Double> firstTotals() {
        return firsts().stream()
                .collect(Collectors.toMap(
                        one -> one.student().account(),
                        one -> one.sheet().orElseThrow().total()));
    }

    /** The lines of the first attempts' mark sheets, laid over one another. */
    public List<SheetLine> lines() {
        return SheetLine.over(firstSheets());
    }

    /** What was done wrong at each line of the first attempts, the commonest first. */
    public List<LineReview> answers() {
        List<MarkSheet> sheets = firstSheets();
        return lines().stream().map(line -> LineReview.of(line, sheets)).toList();
    }

    /** One line of one sheet; empty if it was not asked there. */
    public static Optional<Line> lineOf(MarkSheet sheet, SheetLine line) {
        return sheet.lines().stream().filter(one -> one.id().equals(line.id())).findFirst();
    }

    private List<MarkSheet> firstSheets() {
        return firsts().stream().map(one -> one.sheet().orElseThrow()).toList();
    }
}

package org.manubrium.school.review;

import java.util.List;
import java.util.Locale;
import org.manubrium.exchange.Csv;
import org.manubrium.exchange.Csv.Cell;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.school.review.Leaderboard.Place;

/** What the review shows, as CSV. Students stand there under the same names as on the pages. */
public final class CohortCsv {
    private static final int TOTAL_DECIMALS = 2;
    private static final int CREDIT_DECIMALS = 4;
    private static final int MEAN_DECIMALS = 1;

    private CohortCsv() {}

    /** One row for each attempt at a set case; the total in per cent, blank until it is marked. */
    public static Csv attempts(CohortReview review) {
        Csv csv = new Csv(
                "set_case",
                "case",
                "version",
                "mode",
                "student",
                "attempt",
                "number",
                "first",
                "started_at",
                "handed_in_at",
                "total");
        for (CaseReview one : review.cases()) {
            one.sat()
                    .forEach(sat -> csv.row(
                            Cell.of(one.set().id()),
                            Cell.of(one.title()),
                            Cell.of(one.version()),
                            Cell.of(one.set().mode().name().toLowerCase(Locale.ROOT)),
                            Cell.of(sat.student().shownAs()),
                            Cell.of(sat.attempt().id()),
                            Cell.of(sat.attempt().number()),
                            Cell.of(sat.attempt().isFirst() ? "yes" : "no"),
                            Cell.of(sat.attempt().startedAt().toString()),
                            sat.attempt()
                                    .handedInAt()
                                    .map(at -> Cell.of(at.toString()))
                                    .orElse(Cell.blank()),
                            sat.sheet()
                                    .map(sheet -> Cell.of(sheet.total(), TOTAL_DECIMALS))
                                    .orElse(Cell.blank())));
        }
        return csv;
    }

    /** One row for each line of each mark sheet; the credit 0..1, blank where the line does not score. */
    public static Csv lines(CohortReview review) {
        Csv csv = new Csv(
                "set_case",
                "case",
                "student",
                "attempt",
                "number",
                "first",
                "line",
                "domain",
                "asked",
                "done",
                "key",
                "credit",
                "why",
                "source");
        for (CaseReview one : review.cases()) {
            for (Sat sat : one.sat()) {
                List<Line> lines = sat.sheet().map(MarkSheet::lines).orElse(List.of());
                lines.forEach(line -> csv.row(
                        Cell.of(one.set().id()),
                        Cell.of(one.title()),
                        Cell.of(sat.student().shownAs()),
                        Cell.of(sat.attempt().id()),
                        Cell.of(sat.attempt().number()),
                        Cell.of(sat.attempt().isFirst() ? "yes" : "no"),
                        Cell.of(line.id()),
                        Cell.of(line.domain().word()),
                        Cell.of(line.asked()),
                        Cell.of(line.done()),
                        Cell.of(line.key()),
                        line.scored() ? Cell.of(line.credit(), CREDIT_DECIMALS) : Cell.blank(),
                        Cell.of(line.why()),
                        Cell.of(line.origin().source())));
            }
        }
        return csv;
    }

    /** One row for each wrong answer at each line of the first attempts, with how often it was given. */
    public static Csv answers(CohortReview review) {
        Csv csv =
                new Csv("set_case", "case", "line", "domain", "asked", "key", "sheets", "mean_credit", "done", "times");
        for (CaseReview one : review.cases()) {
            for (LineReview line : one.answers()) {
                line.wrong()
                        .forEach(given -> csv.row(
                                Cell.of(one.set().id()),
                                Cell.of(one.title()),
                                Cell.of(line.line().id()),
                                Cell.of(line.line().domain().word()),
                                Cell.of(line.line().asked()),
                                Cell.of(line.line().key()),
                                Cell.of(line.asked()),
                                Cell.of(line.meanCredit(), CREDIT_DECIMALS),
                                Cell.of(given.done()),
                                Cell.of(given.times())));
            }
        }
        return csv;
    }

    /** One row for each student; the rank is blank for those listed apart. */
    public static Csv leaderboard(CohortReview review) {
        Leaderboard board = review.leaderboard();
        Csv csv = new Csv("rank", "student", "mean", "handed_in", "counted");
        board.ranked().forEach(place -> add(csv, place, Cell.of(place.rank()), board.counted()));
        board.apart().forEach(place -> add(csv, place, Cell.blank(), board.counted()));
        return csv;
    }

    private static void add(Csv csv, Place place, Cell rank, int counted) {
        csv.row(
                rank,
                Cell.of(place.student().shownAs()),
                place.mean().isPresent() ? Cell.of(place.mean().getAsDouble(), MEAN_DECIMALS) : Cell.blank(),
                Cell.of(place.handedIn()),
                Cell.of(counted));
    }
}

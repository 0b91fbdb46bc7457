package org.manubrium.web.student;

import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.manubrium.school.account.Refused;
import org.manubrium.school.student.Assignment;
import org.manubrium.school.student.StudentDesk;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The student's first page: what is set, what is under way, what has been handed in. */
public final class StudentPages {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.UK);

    private final View view;
    private final StudentDesk desk;

    public StudentPages(View view, StudentDesk desk) {
        this.view = view;
        this.desk = desk;
    }

    public void home(Context ctx) {
        long account = Visitor.of(ctx).account().id();
        List<Assignment> all = desk.assignments(account);
        List<Map<String, Object>> set =
                all.stream().filter(Assignment::live).map(StudentPages::row).toList();
        List<Map<String, Object>> closed = all.stream()
                .filter(assignment -> !assignment.live())
                .map(StudentPages::row)
                .toList();
        List<Map<String, Object>> boards = desk.leaderboards(account).stream()
                .map(cohort -> Map.<String, Object>of("cohort", cohort.id(), "name", cohort.name()))
                .toList();
        view.show(ctx, "student/home", Map.of("set", set, "closed", closed, "boards", boards));
    }

    /** Begins a set case, or goes on with it, and leads to the bedside; 409 if that can no longer be done. */
    public void start(Context ctx) {
        long setCase = ctx.formParamAsClass("set", Long.class)
                .getOrThrow(errors -> new NotFoundResponse("There is no such case."));
        try {
            long attempt = desk.start(setCase, Visitor.of(ctx).account().id());
            ctx.redirect("/attempts/" + attempt, HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            throw new ConflictResponse(refused.sentence());
        }
    }

    /** What the button says: a station that can be sat once is not begun unawares. */
    private static String start(Assignment assignment) {
        if (assignment.station()) {
            return "Begin the station, once";
        }
        return assignment.tries().isEmpty() ? "Examine this patient" : "Examine again";
    }

    private static Map<String, Object> row(Assignment assignment) {
        Map<String, Object> row = new HashMap<>();
        row.put("id", assignment.setCase());
        row.put("title", assignment.title());
        row.put("cohort", assignment.cohort());
        row.put("mode", assignment.station() ? "station, sat once" : "practice");
        row.put("open", assignment.open());
        row.put("closes", DATE.format(assignment.closesAt().atZone(ZoneId.systemDefault())));
        row.put("canStart", assignment.canStart());
        row.put("start", start(assignment));
        assignment.underWay().ifPresent(underWay -> row.put("underWay", underWay.attempt()));
        row.put(
                "done",
                assignment.tries().stream()
                        .filter(Assignment.Try::handedIn)
                        .map(t -> Map.of(
                                "attempt",
                                t.attempt(),
                                "total",
                                t.total().map(p -> Math.round(p) + " %").orElse("being marked"),
                                "before",
                                t.before()
                                        .map(p -> "marked again; it was " + Math.round(p) + " %")
                                        .orElse("")))
                        .toList());
        return row;
    }
}

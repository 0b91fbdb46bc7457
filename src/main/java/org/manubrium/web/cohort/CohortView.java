package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.school.cohort.SetLine;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.store.Cohort;
import org.manubrium.store.Enrolment;
import org.manubrium.store.SetCase;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;

/** Draws the page of one cohort, which several forms come back to. */
public final class CohortView {
    private static final Duration USUAL_SPAN = Duration.ofDays(14);
    private static final Map<String, String> DONE = Map.of(
            "made", "The cohort has been made. Add its students, then set it a case.",
            "changed", "The changes are kept.",
            "set", "The case has been set.",
            "closing", "The closing time has been moved.",
            "weighed", "The new weights are kept; what was handed in is being marked again.",
            "taken-back", "The case is no longer set.",
            "uninvited", "The invitation no longer works.");

    private final View view;
    private final Cohorts cohorts;
    private final Rosters rosters;
    private final SetWork work;
    private final Moments moments;
    private final Clock clock;

    public CohortView(View view, Cohorts cohorts, Rosters rosters, SetWork work, Moments moments, Clock clock) {
        this.view = view;
        this.cohorts = cohorts;
        this.rosters = rosters;
        this.work = work;
        this.moments = moments;
        this.clock = clock;
    }

    /** The cohort in the path. */
    Cohort cohort(Context ctx) {
        return cohorts.find(Form.id(ctx, "cohort")).orElseThrow(() -> new NotFoundResponse("There is no such cohort."));
    }

    static String address(Cohort cohort) {
        return "/educator/cohorts/" + cohort.id();
    }

    /** Back to the cohort's page, which says what has been done. */
    static void done(Context ctx, Cohort cohort, String what) {
        ctx.redirect(address(cohort) + "?done=" + what, HttpStatus.SEE_OTHER);
    }

    void show(Context ctx, Cohort cohort) {
        show(ctx, cohort, Map.of(), Map.of());
    }

    /** The page with faults beside the fields of the form that was refused, which keep what was written. */
    void refuse(Context ctx, Cohort cohort, Map<String, String> faults, Map<String, ?> written) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, cohort, faults, written);
    }

    private void show(Context ctx, Cohort cohort, Map<String, String> faults, Map<String, ?> written) {
        Map<String, Object> model = new HashMap<>(fields(cohort));
        model.putAll(written);
        model.put("cohort", cohort(cohort));
        model.put("conventions", conventions());
        model.put(
                "students",
                rosters.of(cohort.id()).stream().map(CohortView::student).toList());
        model.put("work", work.of(cohort.id()).stream().map(this::line).toList());
        model.put("cases", choices());
        model.put("zone", moments.zoneName());
        model.put("faults", faults);
        model.put("done", DONE.getOrDefault(Form.query(ctx, "done"), ""));
        view.show(ctx, "cohort/cohort", model);
    }

    private Map<String, Object> fields(Cohort cohort) {
        Instant opens = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        return Map.of(
                "name", cohort.name(),
                "convention", cohort.convention(),
                "leaderboard", cohort.leaderboardOn(),
                "pseudonyms", cohort.pseudonyms(),
                "pasted", "",
                "version", "",
                "opens", moments.written(opens),
                "closes", moments.written(opens.plus(USUAL_SPAN)),
                "mode", "PRACTICE");
    }

    private Map<String, Object> cohort(Cohort cohort) {
        return Map.of(
                "id", cohort.id(),
                "name", cohort.name(),
                "convention", cohorts.conventionName(cohort.convention()),
                "leaderboard", cohort.leaderboardOn(),
                "pseudonyms", cohort.pseudonyms());
    }

    private List<Map<String, String>> conventions() {
        return cohorts.conventions().stream()
                .map(convention -> Map.of("id", convention.id(), "name", convention.name()))
                .toList();
    }

    private List<Map<String, Object>> choices() {
        return work.choices().stream()
                .map(choice -> Map.<String, Object>of(
                        "id", String.valueOf(choice.versionId()), "title", choice.title(), "version", choice.version()))
                .toList();
    }

    private static Map<String, Object> student(Enrolment student) {
        return Map.of("id", student.accountId(), "name", student.displayName(), "pseudonym", student.pseudonym());
    }

    private Map<String, Object> line(SetLine line) {
        Instant now = clock.instant();
        String state =
                now.isBefore(line.set().opensAt()) ? "not yet open" : line.set().isOpen(now) ? "open" : "closed";
        Map<String, Object> row = new HashMap<>();
        row.put("id", line.set().id());
        row.put("title", line.title());
        row.put("version", line.version());
        row.put("opens", moments.read(line.set().opensAt()));
        row.put("closes", moments.read(line.set().closesAt()));
        row.put("closesField", moments.written(line.set().closesAt()));
        row.put("mode", ModeWord.of(line.set().mode()));
        row.put("station", line.set().mode() == SetCase.Mode.STATION);
        row.put("state", state);
        row.put("begun", line.begun());
        row.put("handedIn", line.handedIn());
        return row;
    }
}

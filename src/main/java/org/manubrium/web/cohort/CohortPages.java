package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.manubrium.school.Misfilled;
import org.manubrium.school.cohort.CohortLine;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Plan;
import org.manubrium.store.Cohort;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The list of cohorts, and what an educator decides about one. */
public final class CohortPages {
    private final View view;
    private final CohortView page;
    private final Cohorts cohorts;

    public CohortPages(View view, CohortView page, Cohorts cohorts) {
        this.view = view;
        this.page = page;
        this.cohorts = cohorts;
    }

    public void list(Context ctx) {
        showList(ctx, Map.of(), "", "");
    }

    public void make(Context ctx) {
        String name = Form.field(ctx, "name");
        String convention = Form.field(ctx, "convention");
        try {
            Cohort made = cohorts.make(Visitor.of(ctx).account().id(), name, convention);
            CohortView.done(ctx, made, "made");
        } catch (Misfilled misfilled) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showList(ctx, misfilled.faults(), name, convention);
        }
    }

    public void show(Context ctx) {
        page.show(ctx, page.cohort(ctx));
    }

    public void change(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        Plan plan = new Plan(
                Form.field(ctx, "name"),
                Form.field(ctx, "convention"),
                Form.ticked(ctx, "leaderboard"),
                Form.ticked(ctx, "pseudonyms"));
        try {
            cohorts.change(Visitor.of(ctx).account().id(), cohort, plan);
            CohortView.done(ctx, cohort, "changed");
        } catch (Misfilled misfilled) {
            page.refuse(
                    ctx,
                    cohort,
                    misfilled.faults(),
                    Map.of(
                            "name", plan.name(),
                            "convention", plan.convention(),
                            "leaderboard", plan.leaderboardOn(),
                            "pseudonyms", plan.pseudonyms()));
        }
    }

    private void showList(Context ctx, Map<String, String> faults, String name, String convention) {
        List<Map<String, Object>> lines = cohorts.all().stream().map(this::line).toList();
        List<Map<String, String>> conventions = cohorts.conventions().stream()
                .map(known -> Map.of("id", known.id(), "name", known.name()))
                .toList();
        view.show(
                ctx,
                "cohort/list",
                Map.of(
                        "cohorts", lines,
                        "conventions", conventions,
                        "faults", faults,
                        "name", name,
                        "convention", convention));
    }

    private Map<String, Object> line(CohortLine line) {
        return Map.of(
                "id", line.cohort().id(),
                "name", line.cohort().name(),
                "convention", cohorts.conventionName(line.cohort().convention()),
                "students", line.students(),
                "work", line.setCases(),
                "leaderboard", line.cohort().leaderboardOn() ? "on" : "off");
    }
}

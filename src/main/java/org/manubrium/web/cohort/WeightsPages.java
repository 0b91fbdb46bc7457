package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.marking.Weights;
import org.manubrium.school.account.Refused;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.mark.Weighing;
import org.manubrium.store.Cohort;
import org.manubrium.store.SetCase;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** How much each domain counts in one set case. */
public final class WeightsPages {
    private static final List<String> FIELDS = List.of(
            "essential",
            "reading",
            "interpretation",
            "conclusion",
            "thoroughness",
            "handling",
            "information",
            "confidence");

    private final View view;
    private final CohortView page;
    private final SetWork work;
    private final Weighing weighing;

    public WeightsPages(View view, CohortView page, SetWork work, Weighing weighing) {
        this.view = view;
        this.page = page;
        this.work = work;
        this.weighing = weighing;
    }

    public void show(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        SetCase set = setCase(ctx, cohort);
        show(ctx, cohort, set, weighing.of(set).text().split(" ", -1), "");
    }

    public void set(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        SetCase set = setCase(ctx, cohort);
        List<String> written =
                FIELDS.stream().map(name -> Form.field(ctx, name).strip()).toList();
        try {
            check(written);
            weighing.set(Visitor.of(ctx).account().id(), set, String.join(" ", written));
            CohortView.done(ctx, cohort, "weighed");
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, cohort, set, written.toArray(String[]::new), refused.sentence());
        }
    }

    /** @throws Refused naming the first field that holds no weight */
    private static void check(List<String> written) {
        for (int i = 0; i < FIELDS.size(); i++) {
            if (!written.get(i).isEmpty() && !Weights.isWeight(written.get(i))) {
                throw new Refused("Under “" + FIELDS.get(i) + "” stands “" + written.get(i)
                        + "”: write a number from 0 to 999, with one decimal at most.");
            }
        }
    }

    private void show(Context ctx, Cohort cohort, SetCase set, String[] written, String fault) {
        Map<String, Object> model = new HashMap<>();
        model.put("cohort", Map.of("id", cohort.id(), "name", cohort.name()));
        model.put("set", set.id());
        model.put("fault", fault);
        model.put("usual", weighing.usual().text());
        for (int i = 0; i < FIELDS.size(); i++) {
            model.put(FIELDS.get(i), i < written.length ? written[i] : "0");
        }
        view.show(ctx, "cohort/weights", model);
    }

    private SetCase setCase(Context ctx, Cohort cohort) {
        return work.find(cohort.id(), Form.id(ctx, "set"))
                .orElseThrow(() -> new NotFoundResponse("There is no such case set to this cohort."));
    }
}

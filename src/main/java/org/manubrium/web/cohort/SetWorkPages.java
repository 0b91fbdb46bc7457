package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.Misfilled;
import org.manubrium.school.account.Refused;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.cohort.Setting;
import org.manubrium.store.Cohort;
import org.manubrium.store.SetCase;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.Visitor;

/** Setting cases to a cohort. */
public final class SetWorkPages {
    private static final String NOT_A_TIME = "Write a date and a time.";

    private final CohortView page;
    private final SetWork work;
    private final Moments moments;

    public SetWorkPages(CohortView page, SetWork work, Moments moments) {
        this.page = page;
        this.work = work;
        this.moments = moments;
    }

    public void set(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        try {
            work.set(Visitor.of(ctx).account().id(), cohort.id(), setting(ctx));
            CohortView.done(ctx, cohort, "set");
        } catch (Misfilled misfilled) {
            page.refuse(ctx, cohort, misfilled.faults(), written(ctx));
        }
    }

    public void moveClosing(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        SetCase set = setCase(ctx, cohort);
        try {
            Instant closes =
                    moments.parse(Form.field(ctx, "closes")).orElseThrow(() -> Misfilled.in("closes", NOT_A_TIME));
            work.moveClosing(Visitor.of(ctx).account().id(), set, closes);
            CohortView.done(ctx, cohort, "closing");
        } catch (Misfilled misfilled) {
            refuseWork(ctx, cohort, String.join(" ", misfilled.faults().values()));
        }
    }

    public void takeBack(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        try {
            work.takeBack(Visitor.of(ctx).account().id(), setCase(ctx, cohort));
            CohortView.done(ctx, cohort, "taken-back");
        } catch (Refused refused) {
            refuseWork(ctx, cohort, refused.sentence());
        }
    }

    private void refuseWork(Context ctx, Cohort cohort, String sentence) {
        page.refuse(ctx, cohort, Map.of("work", sentence), Map.of());
    }

    private SetCase setCase(Context ctx, Cohort cohort) {
        return work.find(cohort.id(), Form.id(ctx, "set"))
                .orElseThrow(() -> new NotFoundResponse("There is no such case set to this cohort."));
    }

    private Setting setting(Context ctx) {
        Map<String, String> faults = new LinkedHashMap<>();
        Optional<Instant> opens = moments.parse(Form.field(ctx, "opens"));
        Optional<Instant> closes = moments.parse(Form.field(ctx, "closes"));
        Optional<Long> version = Form.number(ctx, "version");
        if (version.isEmpty()) {
            faults.put("case", "Choose one of the cases in use.");
        }
        if (opens.isEmpty()) {
            faults.put("opens", NOT_A_TIME);
        }
        if (closes.isEmpty()) {
            faults.put("closes", NOT_A_TIME);
        }
        Misfilled.refuse(faults);
        return new Setting(version.orElseThrow(), opens.orElseThrow(), closes.orElseThrow(), mode(ctx));
    }

    private static SetCase.Mode mode(Context ctx) {
        return Form.field(ctx, "mode").equals("STATION") ? SetCase.Mode.STATION : SetCase.Mode.PRACTICE;
    }

    private static Map<String, String> written(Context ctx) {
        return Map.of(
                "version", Form.field(ctx, "version"),
                "opens", Form.field(ctx, "opens"),
                "closes", Form.field(ctx, "closes"),
                "mode", mode(ctx).name());
    }
}

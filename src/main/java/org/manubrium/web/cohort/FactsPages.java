package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.manubrium.school.account.Refused;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.mark.FactDesk;
import org.manubrium.school.mark.UncheckedFact;
import org.manubrium.store.Cohort;
import org.manubrium.store.SetCase;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The facts behind a set case that nobody here has checked, and who has confirmed them since. */
public final class FactsPages {
    private static final int SOME = 3;

    private final View view;
    private final CohortView page;
    private final SetWork work;
    private final FactDesk desk;
    private final Moments moments;
    private final Map<String, String> citations;

    /** @param citations the citation of each source, by id */
    public FactsPages(
            View view, CohortView page, SetWork work, FactDesk desk, Moments moments, Map<String, String> citations) {
        this.view = view;
        this.page = page;
        this.work = work;
        this.desk = desk;
        this.moments = moments;
        this.citations = Map.copyOf(citations);
    }

    public void show(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        show(ctx, cohort, setCase(ctx, cohort), "");
    }

    public void confirm(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        SetCase set = setCase(ctx, cohort);
        List<String> rows = Form.ticked(ctx, "all")
                ? desk.of(set).stream().map(UncheckedFact::row).toList()
                : ctx.formParams("row");
        change(ctx, cohort, set, () -> desk.confirm(educator(ctx), set, rows, Form.field(ctx, "reason")));
    }

    public void takeBack(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        SetCase set = setCase(ctx, cohort);
        long confirmation = Form.id(ctx, "confirmation");
        change(ctx, cohort, set, () -> desk.takeBack(educator(ctx), confirmation, Form.field(ctx, "reason")));
    }

    private void change(Context ctx, Cohort cohort, SetCase set, Runnable change) {
        try {
            change.run();
            ctx.redirect(CohortView.address(cohort) + "/work/" + set.id() + "/facts?done=yes", HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, cohort, set, refused.sentence());
        }
    }

    private void show(Context ctx, Cohort cohort, SetCase set, String fault) {
        List<UncheckedFact> facts = desk.of(set);
        Map<String, Object> model = new HashMap<>();
        model.put("cohort", Map.of("id", cohort.id(), "name", cohort.name()));
        model.put("set", set.id());
        model.put("title", title(set));
        model.put("station", set.mode() == SetCase.Mode.STATION);
        model.put("fault", fault);
        model.put("done", !Form.query(ctx, "done").isEmpty());
        model.put(
                "open",
                facts.stream().filter(UncheckedFact::open).map(this::fact).toList());
        model.put("unnamed", facts.stream().filter(fact -> fact.row().isEmpty()).count());
        model.put(
                "confirmed",
                facts.stream()
                        .filter(fact -> fact.confirmed().isPresent())
                        .map(this::fact)
                        .toList());
        view.show(ctx, "cohort/facts", model);
    }

    private String title(SetCase set) {
        return work.of(set.cohortId()).stream()
                .filter(line -> line.set().id() == set.id())
                .map(line -> line.title())
                .findFirst()
                .orElse("");
    }

    private Map<String, Object> fact(UncheckedFact fact) {
        Map<String, Object> model = new HashMap<>();
        model.put("row", fact.row());
        model.put("kind", fact.kind());
        model.put("name", fact.name());
        model.put("says", fact.says());
        model.put("source", cite(fact.sources()));
        model.put("marks", fact.marks().size());
        model.put("some", fact.marks().stream().limit(SOME).toList());
        model.put("others", fact.marks().stream().skip(SOME).toList());
        fact.confirmed().ifPresent(made -> {
            model.put("id", made.id());
            model.put("who", made.who());
            model.put("when", moments.read(made.when()));
            model.put("why", made.why());
        });
        return model;
    }

    private String cite(String ids) {
        return Arrays.stream(ids.split(";", -1))
                .map(id -> citations.getOrDefault(id.trim(), id.trim()))
                .collect(Collectors.joining("; "));
    }

    private SetCase setCase(Context ctx, Cohort cohort) {
        return work.find(cohort.id(), Form.id(ctx, "set"))
                .orElseThrow(() -> new NotFoundResponse("There is no such case set to this cohort."));
    }

    private static long educator(Context ctx) {
        return Visitor.of(ctx).account().id();
    }
}

package org.manubrium.web.student;

import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UnprocessableContentResponse;
import java.util.Map;
import org.manubrium.exchange.EventJson;
import org.manubrium.school.bedside.Bedside;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.bedside.Encounter;
import org.manubrium.school.bedside.Taken;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;
import org.manubrium.web.shell.Wants;

/** The bedside: the page, and the events that it sends. */
public final class BedsidePages {
    private final View view;
    private final Bedside bedside;

    public BedsidePages(View view, Bedside bedside) {
        this.view = view;
        this.bedside = bedside;
    }

    /** The page for a person, the encounter as JSON for the page's own script. */
    public void show(Context ctx) {
        Encounter encounter = bedside.open(id(ctx), account(ctx)).orElseThrow(BedsidePages::notYours);
        if (!Wants.page(ctx)) {
            ctx.json(EncounterJson.of(encounter));
            return;
        }
        if (encounter.handedIn()) {
            ctx.redirect("/attempts/" + encounter.attempt() + "/debrief", HttpStatus.SEE_OTHER);
            return;
        }
        view.show(
                ctx,
                "student/bedside",
                Map.of(
                        "attempt",
                        encounter.attempt(),
                        "title",
                        encounter.patient().title()));
    }

    /** One manoeuvre in full, as JSON: how it is done, its cautions, and what can be written down of it. */
    public void manoeuvre(Context ctx) {
        Choices choices = bedside.open(id(ctx), account(ctx))
                .orElseThrow(BedsidePages::notYours)
                .choices();
        ctx.json(choices.examination()
                .manoeuvre(ctx.pathParam("manoeuvre"))
                .map(manoeuvre -> ChoicesJson.manoeuvre(manoeuvre, choices))
                .orElseThrow(() -> new NotFoundResponse("There is no such manoeuvre.")));
    }

    /** Takes one event. */
    public void take(Context ctx) {
        Taken taken = bedside.take(id(ctx), account(ctx), EventJson.read(ctx.body()));
        if (taken instanceof Taken.Stored stored) {
            ctx.json(EncounterJson.Answer.of(stored.event()));
        } else if (taken instanceof Taken.Unfit unfit) {
            throw new UnprocessableContentResponse(unfit.sentence());
        } else if (taken instanceof Taken.Closed) {
            throw new ConflictResponse("This attempt has been handed in; nothing can be added to it.");
        } else {
            throw notYours();
        }
    }

    private static NotFoundResponse notYours() {
        return new NotFoundResponse("You have no such attempt.");
    }

    private static long id(Context ctx) {
        return ctx.pathParamAsClass("id", Long.class).getOrThrow(errors -> notYours());
    }

    private static long account(Context ctx) {
        return Visitor.of(ctx).account().id();
    }
}

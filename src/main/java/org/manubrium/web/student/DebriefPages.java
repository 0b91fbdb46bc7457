package org.manubrium.web.student;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import org.manubrium.school.mark.Debriefs;
import org.manubrium.web.shell.DebriefView;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The marked attempt, for the student whose it is. */
public final class DebriefPages {
    private final View view;
    private final Debriefs debriefs;
    private final DebriefView sheet;

    public DebriefPages(View view, Debriefs debriefs, DebriefView sheet) {
        this.view = view;
        this.debriefs = debriefs;
        this.sheet = sheet;
    }

    public void show(Context ctx) {
        long attempt = ctx.pathParamAsClass("id", Long.class).getOrThrow(errors -> none());
        long account = Visitor.of(ctx).account().id();
        view.show(
                ctx,
                "student/debrief",
                sheet.model(debriefs.own(attempt, account).orElseThrow(DebriefPages::none)));
    }

    private static NotFoundResponse none() {
        return new NotFoundResponse("You have no debrief here: the attempt is not yours, or is not handed in.");
    }
}

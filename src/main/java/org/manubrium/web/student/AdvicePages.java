package org.manubrium.web.student;

import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import org.manubrium.school.mark.Profiles;
import org.manubrium.web.shell.Visitor;

/** "What would help most next?", for one who practises and asks. It names a step and says nothing of what it will show. */
public final class AdvicePages {
    private static final String ENOUGH = "No single step would tell much more now.";

    private final Profiles profiles;

    public AdvicePages(Profiles profiles) {
        this.profiles = profiles;
    }

    /** Whether one may ask here. */
    public void offered(Context ctx) {
        ctx.json(Map.of("offered", profiles.advises(id(ctx), account(ctx))));
    }

    public void next(Context ctx) {
        if (!profiles.advises(id(ctx), account(ctx))) {
            throw new ConflictResponse("Here nothing is said of what to do next.");
        }
        ctx.json(Map.of("next", profiles.next(id(ctx), account(ctx)).orElse(ENOUGH)));
    }

    private static long id(Context ctx) {
        return ctx.pathParamAsClass("id", Long.class)
                .getOrThrow(errors -> new NotFoundResponse("You have no such attempt."));
    }

    private static long account(Context ctx) {
        return Visitor.of(ctx).account().id();
    }
}

package org.manubrium.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Says whether the server can work, for whoever watches over it. */
public final class Health {
    private final BooleanSupplier databaseAnswers;

    public Health(BooleanSupplier databaseAnswers) {
        this.databaseAnswers = databaseAnswers;
    }

    void show(Context ctx) {
        boolean well = databaseAnswers.getAsBoolean();
        ctx.status(well ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE);
        ctx.json(Map.of("status", well ? "up" : "down", "database", well ? "reachable" : "unreachable"));
    }
}

package org.manubrium.web.account;

import io.javalin.http.Context;
import java.util.Optional;

/** Fields of a posted form; one that is missing counts as empty. */
final class Form {
    private Form() {}

    static String field(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }
}

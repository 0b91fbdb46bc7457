package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;

/** Fields of a posted form; one that is missing counts as empty. */
public final class Form {
    private Form() {}

    public static String field(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }

    /** Whether a box was ticked. */
    public static boolean ticked(Context ctx, String name) {
        return !field(ctx, name).isEmpty();
    }

    /** What stands behind the question mark; empty if it does not. */
    public static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    /** The number in the path; what is not one has no page. */
    public static long id(Context ctx, String name) {
        return number(ctx.pathParam(name)).orElseThrow(NotFoundResponse::new);
    }

    /** The number in a field. */
    public static Optional<Long> number(Context ctx, String name) {
        return number(field(ctx, name).strip());
    }

    private static Optional<Long> number(String text) {
        boolean plain = text.length() <= 18 && !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
        return plain ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }
}

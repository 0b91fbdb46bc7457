package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.UnauthorizedResponse;
import io.javalin.security.RouteRole;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import org.manubrium.security.Token;

/** Stands before every route: who may pass, and whether a form is one of ours. What a route does not allow is refused. */
final class Gate {
    private static final Set<HandlerType> SAFE = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

    void check(Context request) {
        Set<RouteRole> route = request.routeRoles();
        if (request.method().equals(HandlerType.HEAD) && route.isEmpty()) {
            return; // Javalin answers it for a GET route with headers alone, and runs nothing
        }
        if (!Access.isOpen(route) && Visitor.of(request).session().isEmpty()) {
            askToSignIn(request);
            return;
        }
        if (!Access.isOpen(route) && !Access.permits(route, Visitor.of(request).roles())) {
            throw new ForbiddenResponse("Your account may not use this page.");
        }
        if (!SAFE.contains(request.method()) && !bearsToken(request)) {
            throw new ForbiddenResponse("This form is out of date. Go back, reload the page and send it again.");
        }
    }

    private static void askToSignIn(Context request) {
        if (!Wants.page(request)) {
            throw new UnauthorizedResponse("Sign in first.");
        }
        String then = request.method().equals(HandlerType.GET)
                ? "?then=" + URLEncoder.encode(request.path(), StandardCharsets.UTF_8)
                : "";
        request.redirect("/sign-in" + then, HttpStatus.SEE_OTHER);
        request.skipRemainingHandlers();
    }

    private static boolean bearsToken(Context request) {
        String expected = Visitor.of(request).csrf();
        return Optional.ofNullable(request.header("X-CSRF-Token"))
                .or(() -> Optional.ofNullable(request.formParam("_csrf")))
                .filter(given -> Token.same(given, expected))
                .isPresent();
    }
}

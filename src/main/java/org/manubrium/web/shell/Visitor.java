package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.http.UnauthorizedResponse;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.security.Session;

/**
 * Who is asking.
 *
 * @param csrf what the forms of this browser send back
 * @param address where the request came from
 */
public record Visitor(Optional<Session> session, String csrf, String address) {
    private static final String ATTRIBUTE = "manubrium.visitor";

    /** The visitor of a request; looked up once, when first asked for. */
    public static Visitor of(Context request) {
        Supplier<Visitor> visitor = request.attribute(ATTRIBUTE);
        if (visitor == null) {
            throw new IllegalStateException("a request that did not pass the visitors' desk");
        }
        return visitor.get();
    }

    static void attach(Context request, Supplier<Visitor> visitor) {
        request.attribute(ATTRIBUTE, visitor);
    }

    /** The account, on a route that is not open to anyone. */
    public Account account() {
        return session.map(Session::account).orElseThrow(UnauthorizedResponse::new);
    }

    public Set<Role> roles() {
        return session.map(open -> open.account().roles()).orElse(Set.of());
    }

    public boolean is(Role role) {
        return roles().contains(role);
    }
}

package org.manubrium.web.shell;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Supplier;
import org.manubrium.school.account.Sessions;
import org.manubrium.security.Session;
import org.manubrium.security.Token;

/** Finds out who is asking: from the session's row, or, before signing in, from a cookie that proves nothing but itself. */
final class Visitors {
    private final Sessions sessions;
    private final Cookies cookies;
    private final Origin origin;

    Visitors(Sessions sessions, Cookies cookies, Origin origin) {
        this.sessions = sessions;
        this.cookies = cookies;
        this.origin = origin;
    }

    /** Makes {@link Visitor#of} work for this request, without asking the database until then. */
    void attach(Context request) {
        Visitor.attach(request, new Once(() -> look(request)));
    }

    private Visitor look(Context request) {
        Optional<Session> session = cookies.session(request).flatMap(sessions::find);
        return new Visitor(
                session, session.map(Session::csrfToken).orElseGet(() -> visit(request)), origin.address(request));
    }

    private String visit(Context request) {
        Token token = cookies.visit(request).orElseGet(() -> {
            Token fresh = Token.random();
            cookies.giveVisit(request, fresh);
            return fresh;
        });
        return token.derived("csrf");
    }

    private static final class Once implements Supplier<Visitor> {
        private final Supplier<Visitor> source;
        private Optional<Visitor> found = Optional.empty();

        Once(Supplier<Visitor> source) {
            this.source = source;
        }

        @Override
        public Visitor get() {
            if (found.isEmpty()) {
                found = Optional.of(source.get());
            }
            return found.get();
        }
    }
}

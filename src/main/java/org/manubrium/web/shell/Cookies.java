package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.manubrium.security.Token;

/** The two cookies: one of a session, one of a browser that has not signed in, to which its forms are bound. */
public final class Cookies {
    private static final String SESSION = "manubrium";
    private static final String VISIT = "manubrium-visit";
    private static final int UNTIL_CLOSED = -1;
    private static final int GONE = 0;

    private final Origin origin;

    Cookies(Origin origin) {
        this.origin = origin;
    }

    Optional<Token> session(Context request) {
        return read(request, SESSION);
    }

    Optional<Token> visit(Context request) {
        return read(request, VISIT);
    }

    public void giveSession(Context answer, Token token) {
        answer.cookie(cookie(answer, SESSION, token.text(), UNTIL_CLOSED));
    }

    void giveVisit(Context answer, Token token) {
        answer.cookie(cookie(answer, VISIT, token.text(), UNTIL_CLOSED));
    }

    public void takeSession(Context answer) {
        answer.cookie(cookie(answer, SESSION, "", GONE));
    }

    private static Optional<Token> read(Context request, String name) {
        return Optional.ofNullable(request.cookie(name))
                .filter(text -> !text.isEmpty())
                .map(Token::new);
    }

    private Cookie cookie(Context answer, String name, String text, int seconds) {
        Cookie cookie = new Cookie(name, text);
        cookie.setPath("/");
        cookie.setMaxAge(seconds);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.LAX);
        cookie.setSecure(origin.isSecure(answer));
        return cookie;
    }
}

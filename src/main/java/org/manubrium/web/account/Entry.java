package org.manubrium.web.account;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.manubrium.school.account.SignedIn;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Landing;
import org.manubrium.web.shell.Visitor;

/** Lets someone in: the cookie, and the first page. */
final class Entry {
    private Entry() {}

    static void let(Context ctx, Cookies cookies, SignedIn signedIn, Optional<String> wanted) {
        cookies.giveSession(ctx, signedIn.cookie());
        Visitor now = new Visitor(
                Optional.of(signedIn.session()),
                signedIn.session().csrfToken(),
                Visitor.of(ctx).address());
        ctx.redirect(wanted.orElseGet(() -> Landing.of(now)), HttpStatus.SEE_OTHER);
    }
}

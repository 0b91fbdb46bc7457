package org.manubrium.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.manubrium.web.shell.Landing;
import org.manubrium.web.shell.Visitor;

/** Where each role begins. */
final class Home {
    private Home() {}

    static void enter(Context ctx) {
        ctx.redirect(Landing.of(Visitor.of(ctx)), HttpStatus.SEE_OTHER);
    }
}

package org.manubrium.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.manubrium.web.shell.Landing;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** Where each role begins. */
public final class Home {
    private final View view;

    public Home(View view) {
        this.view = view;
    }

    void enter(Context ctx) {
        ctx.redirect(Landing.of(Visitor.of(ctx)), HttpStatus.SEE_OTHER);
    }

    void educator(Context ctx) {
        view.show(ctx, "home/educator", Map.of());
    }
}

package org.manubrium.web.account;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.account.Sessions;
import org.manubrium.school.account.SignIn;
import org.manubrium.school.account.SignInResult;
import org.manubrium.school.account.SignInResult.Throttled;
import org.manubrium.school.account.SignInResult.Welcome;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Landing;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** Signing in and out. */
public final class SignInPages {
    private static final String WRONG = "The sign-in name or the password is not right.";

    private final View view;
    private final Cookies cookies;
    private final SignIn signIn;
    private final Sessions sessions;
    private final boolean demo;

    /** @param demo whether the page offers the demo's one-click entry */
    public SignInPages(View view, Cookies cookies, SignIn signIn, Sessions sessions, boolean demo) {
        this.view = view;
        this.cookies = cookies;
        this.signIn = signIn;
        this.sessions = sessions;
        this.demo = demo;
    }

    public void form(Context ctx) {
        String then = Optional.ofNullable(ctx.queryParam("then")).orElse("");
        show(ctx, HttpStatus.OK, "", "", then);
    }

    public void signIn(Context ctx) {
        String name = Form.field(ctx, "name").strip();
        String then = Form.field(ctx, "then");
        SignInResult result = signIn.attempt(
                name, Form.field(ctx, "password"), Visitor.of(ctx).address());
        if (result instanceof Welcome welcome) {
            Visitor.of(ctx).session().ifPresent(sessions::end);
            Entry.let(ctx, cookies, welcome.signedIn(), Landing.wanted(then));
        } else if (result instanceof Throttled throttled) {
            ctx.header("Retry-After", String.valueOf(throttled.delay().toSeconds() + 1));
            show(ctx, HttpStatus.TOO_MANY_REQUESTS, waitFor(throttled.delay()), name, then);
        } else {
            show(ctx, HttpStatus.UNPROCESSABLE_CONTENT, WRONG, name, then);
        }
    }

    public void signOut(Context ctx) {
        Visitor.of(ctx).session().ifPresent(sessions::end);
        cookies.takeSession(ctx);
        ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, HttpStatus status, String fault, String name, String then) {
        ctx.status(status);
        view.show(ctx, "account/sign-in", Map.of("fault", fault, "name", name, "then", then, "demo", demo));
    }

    private static String waitFor(Duration delay) {
        long minutes = delay.toMinutes() + 1;
        return "Too many wrong passwords. Try again in " + minutes + (minutes == 1 ? " minute." : " minutes.");
    }
}

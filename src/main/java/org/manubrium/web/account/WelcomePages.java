package org.manubrium.web.account;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.account.PasswordLinks;
import org.manubrium.school.account.Refused;
import org.manubrium.security.Account;
import org.manubrium.security.Token;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;

/** Where a one-time link leads: setting one's password and coming in. */
public final class WelcomePages {
    private final View view;
    private final Cookies cookies;
    private final PasswordLinks links;

    public WelcomePages(View view, Cookies cookies, PasswordLinks links) {
        this.view = view;
        this.cookies = cookies;
        this.links = links;
    }

    public void form(Context ctx) {
        show(ctx, "");
    }

    public void setPassword(Context ctx) {
        owner(ctx);
        try {
            Entry.let(ctx, cookies, links.setPassword(token(ctx), Form.field(ctx, "wanted")), Optional.empty());
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, refused.sentence());
        }
    }

    private void show(Context ctx, String fault) {
        Account owner = owner(ctx);
        view.show(
                ctx,
                "account/welcome",
                Map.of(
                        "token", token(ctx).text(),
                        "name", owner.displayName(),
                        "login", owner.loginName(),
                        "fault", fault));
    }

    private static Token token(Context ctx) {
        return new Token(ctx.pathParam("token"));
    }

    private Account owner(Context ctx) {
        return links.owner(token(ctx))
                .orElseThrow(() -> new NotFoundResponse(
                        "This link has been used or has expired. Ask your educator for a new one."));
    }
}

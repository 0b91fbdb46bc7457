package org.manubrium.web.account;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.manubrium.school.account.Accounts;
import org.manubrium.school.account.NewAccount;
import org.manubrium.school.account.Refused;
import org.manubrium.security.Token;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The first educator's account, and one's own password. */
public final class AccountPages {
    private final View view;
    private final Cookies cookies;
    private final Accounts accounts;

    public AccountPages(View view, Cookies cookies, Accounts accounts) {
        this.view = view;
        this.cookies = cookies;
        this.accounts = accounts;
    }

    public void firstEducatorForm(Context ctx) {
        showFirst(ctx, link(ctx), "", "", "");
    }

    public void makeFirstEducator(Context ctx) {
        Token link = link(ctx);
        NewAccount wanted =
                new NewAccount(Form.field(ctx, "name"), Form.field(ctx, "display-name"), Form.field(ctx, "password"));
        try {
            Entry.let(ctx, cookies, accounts.makeFirstEducator(link, wanted), Optional.empty());
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showFirst(ctx, link, refused.sentence(), wanted.loginName(), wanted.displayName());
        }
    }

    public void passwordForm(Context ctx) {
        showPassword(ctx, "", false);
    }

    public void changePassword(Context ctx) {
        try {
            accounts.changePassword(
                    Visitor.of(ctx).session().orElseThrow(), Form.field(ctx, "present"), Form.field(ctx, "wanted"));
            showPassword(ctx, "", true);
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showPassword(ctx, refused.sentence(), false);
        }
    }

    private Token link(Context ctx) {
        Token token = new Token(ctx.pathParam("token"));
        if (!accounts.isFirstEducatorLink(token)) {
            throw new NotFoundResponse("This link has been used or has expired.");
        }
        return token;
    }

    private void showFirst(Context ctx, Token link, String fault, String name, String displayName) {
        view.show(
                ctx,
                "account/first-educator",
                Map.of("token", link.text(), "fault", fault, "name", name, "displayName", displayName));
    }

    private void showPassword(Context ctx, String fault, boolean changed) {
        view.show(ctx, "account/password", Map.of("fault", fault, "changed", changed));
    }
}

package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import org.manubrium.school.account.NewAccount;
import org.manubrium.school.account.Refused;
import org.manubrium.school.cohort.Invitations;
import org.manubrium.security.Role;
import org.manubrium.security.Token;
import org.manubrium.store.Cohort;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** Joining a cohort by an invitation, with an account one has or a new one. */
public final class JoinPages {
    private final View view;
    private final Cookies cookies;
    private final Invitations invitations;

    public JoinPages(View view, Cookies cookies, Invitations invitations) {
        this.view = view;
        this.cookies = cookies;
        this.invitations = invitations;
    }

    public void form(Context ctx) {
        show(ctx, "", "", "");
    }

    public void join(Context ctx) {
        Token token = token(ctx);
        if (Visitor.of(ctx).is(Role.STUDENT)) {
            invitations.join(token, Visitor.of(ctx).account().id());
            ctx.redirect("/student", HttpStatus.SEE_OTHER);
        } else {
            joinAsSomebodyNew(ctx, token);
        }
    }

    private void joinAsSomebodyNew(Context ctx, Token token) {
        NewAccount wanted =
                new NewAccount(Form.field(ctx, "name"), Form.field(ctx, "display-name"), Form.field(ctx, "password"));
        try {
            cookies.giveSession(ctx, invitations.joinAs(token, wanted).cookie());
            ctx.redirect("/student", HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, refused.sentence(), wanted.loginName(), wanted.displayName());
        }
    }

    private void show(Context ctx, String fault, String name, String displayName) {
        Token token = token(ctx);
        Map<String, Object> model = new HashMap<>();
        model.put("token", token.text());
        model.put("cohort", cohort(token).name());
        model.put("student", Visitor.of(ctx).is(Role.STUDENT));
        model.put("fault", fault);
        model.put("name", name);
        model.put("displayName", displayName);
        view.show(ctx, "cohort/join", model);
    }

    private Token token(Context ctx) {
        Token token = new Token(ctx.pathParam("token"));
        cohort(token);
        return token;
    }

    private Cohort cohort(Token token) {
        return invitations
                .cohort(token)
                .orElseThrow(() -> new NotFoundResponse(
                        "This invitation has expired or been taken back. Ask your educator for a new one."));
    }
}

package org.manubrium.web.account;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Optional;
import org.manubrium.school.account.DemoAccounts;
import org.manubrium.school.account.Sessions;
import org.manubrium.security.Role;
import org.manubrium.web.shell.Cookies;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Visitor;

/** The demo's way in: a click on a role. Exists only where the database is thrown away. */
public final class DemoEntry {
    private final Cookies cookies;
    private final DemoAccounts accounts;
    private final Sessions sessions;

    public DemoEntry(Cookies cookies, DemoAccounts accounts, Sessions sessions) {
        this.cookies = cookies;
        this.accounts = accounts;
        this.sessions = sessions;
    }

    public void enter(Context ctx) {
        Role role = role(Form.field(ctx, "role"));
        Visitor.of(ctx).session().ifPresent(sessions::end);
        Entry.let(ctx, cookies, accounts.enter(role), Optional.empty());
    }

    private static Role role(String word) {
        return Arrays.stream(Role.values())
                .filter(role -> role.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("Choose student, educator or reviewer."));
    }
}
